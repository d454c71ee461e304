// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

/**
 * What one tooth cuts of all that is cut in a turn.
 *
 * @param percent of the sum over the teeth; 100 over the flutes when all are alike
 * @param uncertainty expanded, 95 %, in the same per cent
 */
public record LoadShare(double percent, double uncertainty) {
    /** Whether the tooth cuts nothing: those before it have taken its chip. */
    public boolean isIdle() {
        return percent <= 0;
    }
}
