/**
 * A job as people tell it: the holes of a drawing as a table or as JSON, what the shop has for them, and the answers
 * that the engine's route gives, for programs and for people.
 *
 * <p>One form for a job and one for a line of it; every bad cell of every line is found at once, with its line. What is
 * kept is what was typed, each bare figure with its unit. Knows no database.
 */
@NullMarked
package landfall.cards.job;

import org.jspecify.annotations.NullMarked;
