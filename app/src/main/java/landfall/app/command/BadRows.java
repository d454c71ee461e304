// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import landfall.fault.Finding;
import landfall.store.table.FindingsOut;
import landfall.store.table.Wish;

/** Every bad row of an import, as a table of its own where one was asked for. */
final class BadRows implements Wish.Bad, AutoCloseable {
    private final Optional<FindingsOut> out;

    private BadRows(Optional<FindingsOut> out) {
        this.out = out;
    }

    static BadRows to(Optional<String> file) throws IOException {
        return new BadRows(file.isEmpty() ? Optional.empty() : Optional.of(FindingsOut.to(Path.of(file.get()))));
    }

    @Override
    public void accept(long line, Finding finding) {
        out.ifPresent(table -> table.put(line, finding));
    }

    @Override
    public void close() throws IOException {
        if (out.isPresent()) {
            out.get().close();
        }
    }
}
