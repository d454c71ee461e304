// SPDX-License-Identifier: Apache-2.0
package landfall.app.methods;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class PublicationTest {
    @Test
    void anEntryIsReadFieldByField() {
        List<Publication> read = Publication.read("""
                @book{handbook-31,
                  title = {A Handbook},
                  edition = {31},
                  publisher = {Press \\& Sons},
                  note = {Pages 970--1002 were read.},
                }

                @misc{derived,
                  title = {Derived in the project's own {method} notes},
                }
                """);
        assertThat(read).extracting(Publication::key).containsExactly("derived", "handbook-31");
        assertThat(read.get(1).from()).isEqualTo("Press & Sons, 31");
        assertThat(read.get(1).note()).isEqualTo("Pages 970–1002 were read.");
        assertThat(read.get(0).title()).isEqualTo("Derived in the project's own method notes");
    }

    @Test
    void everyPublicationOfTheProgramHasATitle() {
        assertThat(Notes.held().publications())
                .isNotEmpty()
                .allMatch(publication -> !publication.title().isBlank());
    }
}
