/**
 * Work materials: how they are called, and what handbooks and practice say of cutting them.
 *
 * <p>Rows are data in {@code /material/materials.csv}; every figure has its source and trust beside it. A material is
 * found by its id or by any of its names. Knows nothing of threads or taps.
 */
@NullMarked
package landfall.material;

import org.jspecify.annotations.NullMarked;
