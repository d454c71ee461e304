// SPDX-License-Identifier: Apache-2.0
package landfall.material;

/** The fluid a list advises, and its words. */
public record FluidAdvice(CuttingFluid fluid, String words) {}
