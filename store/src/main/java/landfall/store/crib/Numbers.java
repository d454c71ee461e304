// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import landfall.history.ItemKind;
import landfall.history.Mark;
import org.jdbi.v3.core.Handle;

/** The numbers that the program gives to marks; none is given twice, a thing that was never kept uses one up. */
final class Numbers {
    private final Handle handle;

    Numbers(Handle handle) {
        this.handle = handle;
    }

    Mark next(ItemKind kind) {
        String name = "next-" + kind.word();
        handle.createUpdate("insert into note (name, told) values (:name, '0') on conflict (name) do nothing")
                .bind("name", name)
                .execute();
        handle.createUpdate("update note set told = cast(cast(told as bigint) + 1 as varchar(20)) where name = :name")
                .bind("name", name)
                .execute();
        long number = handle.createQuery("select told from note where name = :name")
                .bind("name", name)
                .mapTo(Long.class)
                .one();
        return Mark.numbered(kind, number);
    }
}
