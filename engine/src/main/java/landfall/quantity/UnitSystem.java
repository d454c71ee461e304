// SPDX-License-Identifier: Apache-2.0
package landfall.quantity;

/** The two systems of units a shop works in. */
public enum UnitSystem {
    INCH,
    METRIC
}
