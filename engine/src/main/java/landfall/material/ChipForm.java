// SPDX-License-Identifier: Apache-2.0
package landfall.material;

/** The chip of a material: its class, and the words of the list. */
public record ChipForm(ChipClass kind, String words) {}
