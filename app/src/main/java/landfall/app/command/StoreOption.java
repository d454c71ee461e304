// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.time.Clock;
import landfall.app.folder.DataFolder;
import landfall.fault.Answer;
import landfall.store.Store;
import landfall.store.StoreAddress;

/** {@code --store FILE|URL}; a file in the user's own folder when it is left out. */
final class StoreOption {
    private StoreOption() {}

    static Answer<Store> open(Options.Written written) {
        return address(written).map(address -> Store.open(address, Clock.systemUTC()));
    }

    static Answer<StoreAddress> address(Options.Written written) {
        return written.text("store")
                .map(StoreAddress::read)
                .orElseGet(() -> Answer.of(DataFolder.ofThisUser().crib()));
    }
}
