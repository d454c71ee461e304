// SPDX-License-Identifier: Apache-2.0
package landfall.app.folder;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DataFolderTest {
    private static final Path HOME = Path.of("/home/turner");

    private static Path on(String system, Map<String, String> environment) {
        return DataFolder.of(environment, system, HOME).path();
    }

    @Test
    void theOwnVariableComesFirst() {
        assertThat(on("Linux", Map.of("LANDFALL_HOME", "/srv/shop", "XDG_DATA_HOME", "/data")))
                .isEqualTo(Path.of("/srv/shop"));
    }

    @Test
    void otherwiseItIsWhereTheSystemKeepsAUsersData() {
        assertThat(on("Linux", Map.of())).isEqualTo(HOME.resolve(".local/share/landfall"));
        assertThat(on("Linux", Map.of("XDG_DATA_HOME", "/data"))).isEqualTo(Path.of("/data/landfall"));
        assertThat(on("Mac OS X", Map.of())).isEqualTo(HOME.resolve("Library/Application Support/Landfall"));
        assertThat(on("Windows 11", Map.of())).isEqualTo(HOME.resolve("AppData/Local/Landfall"));
    }

    @Test
    void aRelativeDataHomeAndABlankVariableAreIgnored() {
        assertThat(on("Linux", Map.of("XDG_DATA_HOME", "data", "LANDFALL_HOME", " ")))
                .isEqualTo(HOME.resolve(".local/share/landfall"));
    }
}
