// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PeopleCommandTest {
    private static final String PASSWORD = "four words of a toolroom\n";

    @TempDir
    private Path folder;

    private String store = "";

    @BeforeEach
    void aStoreOfItsOwn() {
        store = folder.resolve("crib.db").toString();
    }

    private Run people(String input, String... words) {
        List<String> all = new ArrayList<>(List.of("people"));
        all.addAll(List.of(words));
        all.addAll(List.of("--store", store));
        return Run.with(input, all.toArray(String[]::new));
    }

    @Test
    void somebodyIsLetInGivenAnotherRoleShutOutAndLetInAgain() throws IOException {
        assertThat(people("", "list").out()).startsWith("Nobody is let in yet.");
        assertThat(people(PASSWORD, "add", "Ida", "--role", "keep", "--shown", "Ida Marsh")
                        .out())
                .isEqualTo("ida is let in, with the role keep.\n");
        people(PASSWORD, "add", "jon", "--role", "look");
        assertThat(people("", "role", "jon", "--role", "use").out()).isEqualTo("jon has the role use now.\n");
        assertThat(people("", "close", "jon").out()).isEqualTo("jon is shut out.\n");
        JsonNode list = new ObjectMapper().readTree(people("", "list", "--json").out());
        assertThat(list.at("/people/0/shown").asText()).isEqualTo("Ida Marsh");
        assertThat(list.at("/people/1/role").asText()).isEqualTo("use");
        assertThat(list.at("/people/1/active").asBoolean()).isFalse();
        assertThat(list.toString()).doesNotContain("argon2");
        assertThat(people("", "open", "jon").out()).contains("let in again");
        assertThat(people("another password of jon\n", "reset", "jon").exit()).isEqualTo(Exit.DONE);
    }

    @Test
    void aBadNameRoleAndPasswordAreRefusedWithTheMend() {
        Run run = people(PASSWORD, "add", "no good name", "--role", "chief");
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(run.err().lines()).hasSize(2);
        assertThat(run.err())
                .contains("name: \"no good name\" is not a name to sign in with")
                .contains("role: \"chief\" must be look, use or keep. To mend: write look to read");
        Run weak = people("taps1234\n", "add", "ida", "--role", "keep");
        assertThat(weak.exit()).isEqualTo(Exit.REFUSED);
        assertThat(weak.err()).contains("has 8 characters").doesNotContain("taps1234");
        assertThat(people("", "add", "ida", "--role", "keep").err()).startsWith("password: \"\" is needed");
        assertThat(people("", "add", "ida").out() + people("", "add", "ida").err())
                .contains("write --role look, use or keep");
    }

    @Test
    void aPasswordIsNoWordOfTheCommand() {
        Run run = people("", "add", "ida", "--role", "keep", "--password", "four words of a toolroom");
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(run.err()).contains("is not an option of people add");
    }

    @Test
    void whoIsNotThereEndsWithThreeAndTheLastKeeperStays() throws IOException {
        for (String word : List.of("close", "open", "reset")) {
            assertThat(people(PASSWORD, word, "ghost").exit()).as(word).isEqualTo(Exit.NO_RECORD);
        }
        assertThat(people("", "role", "ghost", "--role", "use").exit()).isEqualTo(Exit.NO_RECORD);
        people(PASSWORD, "add", "ida", "--role", "keep");
        Run run = people("", "close", "ida", "--json");
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(new ObjectMapper().readTree(run.out()).at("/refused/0/why").asText())
                .isEqualTo("is the last who keeps");
        assertThat(people("", "clos", "ida").err()).contains("did you mean close?");
    }

    @Test
    void theNetworkIsRefusedUntilSomebodyKeepsTheCrib() {
        Run run = Run.of("serve", "--listen", "0.0.0.0", "--port", "0", "--store", store);
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(run.err())
                .isEqualTo("--listen: \"0.0.0.0\" opens the crib to others, and nobody is let in yet who keeps it."
                        + " To mend: run landfall people add NAME --role keep and the same --store,"
                        + " then start it again; or leave the option out.\n");
        people(PASSWORD, "add", "ida", "--role", "use");
        assertThat(Run.of("serve", "--listen", "0.0.0.0", "--port", "0", "--store", store)
                        .exit())
                .isEqualTo(Exit.REFUSED);
    }

    @Test
    void aProxyIsNamedByItsHttpsAddressAndStandsOnThisMachine() {
        Run run = Run.of("serve", "--tls-proxy", "http://toolroom.example", "--store", store);
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(run.err()).startsWith("--tls-proxy: \"http://toolroom.example\" is not the https address");
        Run around =
                Run.of("serve", "--tls-proxy", "https://toolroom.example", "--listen", "0.0.0.0", "--store", store);
        assertThat(around.err()).startsWith("--listen: \"0.0.0.0\" would let people go round the proxy");
    }
}
