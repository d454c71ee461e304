/**
 * Where records are kept: one SQLite file, or a PostgreSQL database for a shop with several benches.
 *
 * <p>One set of migrations and one SQL for both. SQLite: write-ahead log, full sync, one writer. A write is
 * acknowledged when the database has committed it, so nothing acknowledged is lost when the program is killed. Knows no
 * pages and no commands. See docs/store.md.
 */
@NullMarked
package landfall.store;

import org.jspecify.annotations.NullMarked;
