// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import landfall.history.ItemKind;
import landfall.history.Mark;
import org.jdbi.v3.core.Handle;

/** The numbers that the program gives; none is given twice, and one that was never used is gone. */
public final class Numbers {
    private final Handle handle;

    public Numbers(Handle handle) {
        this.handle = handle;
    }

    Mark next(ItemKind kind) {
        return Mark.numbered(kind, next(kind.word()));
    }

    /** The next number of a kind of thing. */
    public long next(String kind) {
        String name = "next-" + kind;
        handle.createUpdate("insert into note (name, told) values (:name, '0') on conflict (name) do nothing")
                .bind("name", name)
                .execute();
        handle.createUpdate("update note set told = cast(cast(told as bigint) + 1 as varchar(20)) where name = :name")
                .bind("name", name)
                .execute();
        return handle.createQuery("select told from note where name = :name")
                .bind("name", name)
                .mapTo(Long.class)
                .one();
    }
}
