/**
 * The web server: its addresses, what it refuses, what every answer carries.
 *
 * <p>It listens on the loopback address unless told otherwise. A new page is one line in {@code Routes}; a new question
 * needs nothing here. No page of it loads anything from another machine, and it sends nothing out.
 */
@NullMarked
package landfall.app.serve;

import org.jspecify.annotations.NullMarked;
