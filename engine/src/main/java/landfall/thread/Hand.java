// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

/** The hand of a thread. The engine computes right-handed; hand is applied once, where an answer is worded. */
public enum Hand {
    RIGHT,
    LEFT;

    public String word() {
        return this == RIGHT ? "right" : "left";
    }
}
