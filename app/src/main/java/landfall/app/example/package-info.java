/**
 * The cards of an invented shop that come with the program, to start from and to be shown by the demo.
 *
 * <p>They are the files of the folder {@code examples}, copied into the program by the build.
 */
@NullMarked
package landfall.app.example;

import org.jspecify.annotations.NullMarked;
