// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

/**
 * What stands on a label.
 *
 * @param mark large, to be read by eye and typed
 * @param what it is: {@code tap M8x1.25}
 * @param address what the square code holds, for a phone's own camera
 */
public record Label(String mark, String what, String address) {}
