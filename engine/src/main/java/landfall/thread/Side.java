// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

/** Which of the two mating threads. */
public enum Side {
    EXTERNAL,
    INTERNAL
}
