/**
 * Bodies as files that other programs read, STL, 3MF and binary glTF, and as a still picture. Left-hand taps come in as
 * their mirror image.
 */
@NullMarked
package landfall.sheets.body;

import org.jspecify.annotations.NullMarked;
