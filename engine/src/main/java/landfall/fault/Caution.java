// SPDX-License-Identifier: Apache-2.0
package landfall.fault;

/**
 * A doubt or a danger that is printed wherever its figure is.
 *
 * @param code stable name, for programs
 * @param text what a person reads
 * @param raisedBy the figure or fact that raised it, empty when the work itself does
 */
public record Caution(String code, String text, String raisedBy) {
    public Caution(String code, String text) {
        this(code, text, "");
    }
}
