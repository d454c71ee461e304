/**
 * Things and events from tables and to them: CSV with named columns, read line by line in constant memory.
 *
 * <p>A table with a column {@code event} tells events, any other one things. Every bad row is told with its line, field
 * and mend; the good ones are taken, or none, as the person chooses. A table that was read before changes nothing when
 * it is read again.
 */
@NullMarked
package landfall.store.table;

import org.jspecify.annotations.NullMarked;
