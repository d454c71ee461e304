/**
 * Who may do what with the crib: people, their roles, their sign-ins.
 *
 * <p>Knows no web page. A password is held as long as it takes to hash it, and of a sign-in only a digest is kept, so
 * that whoever reads the store can be nobody by it.
 */
@NullMarked
package landfall.store.people;

import org.jspecify.annotations.NullMarked;
