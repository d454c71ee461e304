// SPDX-License-Identifier: Apache-2.0
package landfall.app.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BuildTest {
    @Test
    void theRunningBuildKnowsItsVersion() {
        assertThat(Build.running().version()).matches("\\d+\\.\\d+\\.\\d+");
        assertThat(Build.running().commit()).doesNotContain("$");
    }

    @Test
    void theCommitIsLeftOutWhenTheBuildWasNotToldIt() {
        assertThat(new Build("1.2.3", "").words()).isEqualTo("landfall 1.2.3");
        assertThat(new Build("1.2.3", "1a2b3c4+").words()).isEqualTo("landfall 1.2.3 (1a2b3c4+)");
    }
}
