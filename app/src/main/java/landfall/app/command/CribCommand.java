// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.List;
import landfall.cards.words.Words;

/** {@code landfall crib ...}: the things that the shop keeps, and what happened to them. */
final class CribCommand extends DeskCommand {
    CribCommand() {
        super(
                "crib",
                "crib.part.",
                List.of(
                        new CribAdd(),
                        new CribList(),
                        new CribShow(),
                        new CribLog(),
                        new CribDue(),
                        new CribImport(),
                        new CribExport(),
                        new CribLabel(),
                        new CribBackup(),
                        new CribRestore()));
    }

    @Override
    public String summary() {
        return Words.of("noun.crib");
    }
}
