// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import landfall.store.Store;
import landfall.store.StoreAddress;
import landfall.store.people.Password;
import landfall.store.people.People;
import landfall.store.people.PersonName;
import landfall.store.people.Role;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What is typed at a machine while the server is away is kept in the browser, and accepted once when it is back. */
class WaitingEntryTest {
    private final StoreAddress store = Chromium.newStore();
    private Chromium chromium = new Chromium("127.0.0.1", store);
    private final Page page = chromium.page(Chromium.PHONE, ColorScheme.LIGHT);

    @AfterEach
    void close() {
        chromium.close();
    }

    private void aTap() {
        page.navigate(chromium.address("/crib"));
        page.fill("form.given input[name=thread]", "M8x1.25-6H");
        page.fill("form.given input[name=mark]", "T-1");
        page.click("form.given button.first");
        page.locator("h1:has-text('T-1')").waitFor();
    }

    private Locator waiting() {
        return page.locator("#waiting");
    }

    private static void write(Page page, String holes) {
        page.fill("input[name=holes]", holes);
        page.click("form.given button.first");
    }

    private void nothingWaits() {
        waiting().waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.HIDDEN));
    }

    private List<String> story() {
        page.navigate(chromium.address("/crib/T-1"));
        return page.locator(".story li").allInnerTexts();
    }

    @Test
    void entriesOfAServerThatIsAwayAreKeptAndSentOnceWhenItIsBack() {
        aTap();
        page.fill("input[name=by]", "Ida");
        chromium.stopServer();
        write(page, "7");
        page.locator("#waiting:has-text('Waiting: 1.')").waitFor();
        assertThat(page.inputValue("input[name=holes]")).isEmpty();
        assertThat(page.inputValue("input[name=by]")).isEqualTo("Ida");
        write(page, "5");
        page.locator("#waiting:has-text('Waiting: 2.')").waitFor();
        assertThat(waiting().innerText()).contains("T-1 tapped holes 7", "T-1 tapped holes 5");
        Chromium.picture(page, "waiting-390");
        chromium.startServer();
        nothingWaits();
        assertThat(story())
                .hasSize(2)
                .anySatisfy(line -> assertThat(line).contains("Ida: tapped holes 7"))
                .anySatisfy(line -> assertThat(line).contains("Ida: tapped holes 5"));
        assertThat(page.locator(".lead").innerText()).contains("Holes: 12,");
    }

    @Test
    void anEntryWhoseAnswerWasLostIsSentAgainAndKeptOnce() {
        aTap();
        AtomicBoolean lost = new AtomicBoolean();
        page.route("**/crib/T-1", route -> {
            if (route.request().method().equals("POST") && !lost.getAndSet(true)) {
                assertThat(route.fetch().status()).as("the server took it").isEqualTo(200);
                route.abort("connectionreset");
            } else {
                route.resume();
            }
        });
        write(page, "7");
        page.locator("#waiting:has-text('Waiting: 1.')").waitFor();
        nothingWaits();
        assertThat(lost).isTrue();
        assertThat(story()).hasSize(1);
        assertThat(page.locator(".lead").innerText()).contains("Holes: 7,");
    }

    @Test
    void anEntryWaitsThroughAnotherPageAndIsToldWhenItIsRefused() {
        aTap();
        Page bench = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        bench.navigate(page.url());
        page.route("**/crib/T-1", route -> {
            if (route.request().method().equals("POST")) {
                route.abort("internetdisconnected");
            } else {
                route.resume();
            }
        });
        write(page, "7");
        page.locator("#waiting:has-text('Waiting: 1.')").waitFor();
        write(bench, "3");
        bench.locator(".done").waitFor();
        page.navigate(chromium.address("/thread"));
        assertThat(waiting().innerText()).contains("Waiting: 1.");
        page.unroute("**/crib/T-1");
        page.locator("#waiting:has-text('meanwhile 1 tapped by')").waitFor();
        Chromium.picture(page, "waiting-refused-390");
        page.click("#waiting >> text=Send again");
        nothingWaits();
        assertThat(story()).hasSize(2);
        bench.context().close();
    }

    @Test
    void whatCanNoLongerHappenIsToldAndThrownAwayByHand() {
        aTap();
        Page bench = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        bench.navigate(page.url() + "?event=scrapped");
        chromium.stopServer();
        write(page, "7");
        page.locator("#waiting:has-text('Waiting: 1.')").waitFor();
        page.navigate("about:blank");
        chromium.startServer();
        bench.click("form.given button.first");
        bench.locator(".done").waitFor();
        page.navigate(chromium.address("/crib/T-1"));
        page.locator("#waiting:has-text('Refused: ')").waitFor();
        page.click("#waiting >> text=Throw it away");
        nothingWaits();
        assertThat(story()).hasSize(1);
        bench.context().close();
    }

    @Test
    void whatIsRefusedAtOnceStandsInTheFormAgainAndDoesNotWait() {
        aTap();
        write(page, "many");
        page.locator(".refused").waitFor();
        assertThat(page.inputValue("input[name=holes]")).isEqualTo("many");
        assertThat(waiting().isVisible()).isFalse();
        write(page, "7");
        page.locator(".done").waitFor();
        assertThat(story()).hasSize(1);
    }

    @Test
    void anEntryOfOnePersonIsNotSignedByTheNext() {
        chromium.close();
        try (Store open = Store.open(store, Clock.systemUTC())) {
            People people = new People(open, Clock.systemUTC());
            for (String name : List.of("ida", "jon")) {
                people.add(new PersonName(name), name, Role.KEEP, Password.typed(PeoplePagesTest.PASSWORD))
                        .orThrow();
            }
        }
        chromium = new Chromium("0.0.0.0", store);
        Page shared = chromium.page(Chromium.PHONE, ColorScheme.LIGHT);
        shared.navigate(chromium.address("/crib"));
        PeoplePagesTest.signIn(shared, "ida", PeoplePagesTest.PASSWORD);
        shared.fill("form[action='/crib'][method=post] input[name=thread]", "M6");
        shared.fill("form[action='/crib'][method=post] input[name=mark]", "T-1");
        shared.click("form[action='/crib'][method=post] button");
        chromium.stopServer();
        write(shared, "7");
        shared.locator("#waiting:has-text('Waiting: 1.')").waitFor();
        shared.context().clearCookies();
        chromium.startServer();
        shared.locator("#waiting:has-text('It waits until you have signed in')").waitFor();
        shared.navigate(chromium.address("/crib/T-1"));
        PeoplePagesTest.signIn(shared, "jon", PeoplePagesTest.PASSWORD);
        shared.locator("#waiting:has-text('is not who has signed in here: that is jon')")
                .waitFor();
        shared.click(".who button");
        shared.navigate(chromium.address("/crib/T-1"));
        PeoplePagesTest.signIn(shared, "ida", PeoplePagesTest.PASSWORD);
        shared.click("#waiting >> text=Send again");
        shared.locator("#waiting").waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.HIDDEN));
        shared.reload();
        assertThat(shared.locator(".story li").first().innerText()).contains("ida: tapped holes 7");
        shared.context().close();
    }
}
