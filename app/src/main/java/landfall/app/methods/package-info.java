/**
 * The page {@code Methods}: the method notes and the publications behind the figures.
 *
 * <p>The notes are the files of {@code docs/methods}, the publications those of {@code sources.bib}, both copied into
 * the program by the build. Nothing is written here that does not stand there.
 */
@NullMarked
package landfall.app.methods;

import org.jspecify.annotations.NullMarked;
