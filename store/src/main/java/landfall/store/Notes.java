// SPDX-License-Identifier: Apache-2.0
package landfall.store;

import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Facts about the store itself, by name. */
final class Notes {
    private Notes() {}

    /** Whether an SQLite file has the table yet. */
    static boolean there(Handle handle) {
        return handle.createQuery("select count(*) from sqlite_master where type = 'table' and name = 'note'")
                        .mapTo(Integer.class)
                        .one()
                > 0;
    }

    static Optional<String> told(Handle handle, String name) {
        return handle.createQuery("select told from note where name = :name")
                .bind("name", name)
                .mapTo(String.class)
                .findOne();
    }

    static void tell(Handle handle, String name, String told) {
        handle.createUpdate("insert into note (name, told) values (:name, :told)"
                        + " on conflict (name) do update set told = excluded.told")
                .bind("name", name)
                .bind("told", told)
                .execute();
    }
}
