// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

/** What cuts: flutes, lands, chamfer, and the relief of the thread behind the edge. */
public record Cutting(Flutes flutes, Land land, ChamferGiven chamfer, ThreadRelief relief) {}
