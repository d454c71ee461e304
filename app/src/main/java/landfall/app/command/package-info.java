/**
 * The command line: which command was asked for, what was written for it, how the answer and the exit code go out.
 *
 * <p>Options come from a question's form and are read by picocli without reflection on our classes. Every mistake on
 * the line is found at once. Standard output holds answers only; refusals in sentences go to standard error, with
 * {@code --json} as one document to standard output. Nothing here computes.
 */
@NullMarked
package landfall.app.command;

import org.jspecify.annotations.NullMarked;
