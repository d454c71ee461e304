// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import landfall.quantity.UnitSystem;

/**
 * How a sheet is wanted.
 *
 * @param foot what stands at the foot of every page, such as the program's version
 */
public record SheetOrder(UnitSystem units, PaperSize paper, String foot) {}
