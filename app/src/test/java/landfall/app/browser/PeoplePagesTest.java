// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.time.Clock;
import java.util.List;
import landfall.store.Store;
import landfall.store.StoreAddress;
import landfall.store.people.Password;
import landfall.store.people.People;
import landfall.store.people.PersonName;
import landfall.store.people.Role;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** On the shop's network: signing in, letting somebody in, and what each role sees. */
class PeoplePagesTest {
    static final String PASSWORD = "four words of a toolroom";
    private static Chromium chromium;

    @BeforeAll
    static void open() {
        StoreAddress address = Chromium.newStore();
        try (Store store = Store.open(address, Clock.systemUTC())) {
            new People(store, Clock.systemUTC())
                    .add(new PersonName("ida"), "Ida Marsh", Role.KEEP, Password.typed(PASSWORD))
                    .orThrow();
        }
        chromium = new Chromium("0.0.0.0", address);
    }

    @AfterAll
    static void close() {
        chromium.close();
    }

    @Test
    void aKeeperSignsInLetsSomebodyInAndThatOneSeesNoMoreThanTheRoleMay() {
        Page keeper = chromium.page(Chromium.PHONE, ColorScheme.LIGHT);
        keeper.navigate(chromium.address("/crib"));
        assertThat(keeper.locator("h1").innerText()).isEqualTo("Who are you?");
        look(keeper, "sign-in");
        signIn(keeper, "Ida", "the wrong words for this");
        assertThat(keeper.locator(".refused").innerText()).contains("do not belong together");
        signIn(keeper, "Ida", PASSWORD);
        assertThat(keeper.locator("h1").innerText()).isEqualTo("What taps do we own, and how do they stand?");
        assertThat(keeper.locator(".who").innerText()).contains("Ida Marsh");
        keeper.fill("form[action='/crib'][method=post] input[name=thread]", "M8x1.25-6H");
        keeper.fill("form[action='/crib'][method=post] input[name=mark]", "T-17");
        keeper.click("form[action='/crib'][method=post] button");
        look(keeper, "crib-signed-in");
        keeper.navigate(chromium.address("/people"));
        add(keeper, "jon", "look", "short");
        assertThat(keeper.locator(".refused").innerText()).contains("has 5 characters");
        assertThat(keeper.inputValue("#give-name")).isEqualTo("jon");
        add(keeper, "jon", "look", PASSWORD);
        keeper.click("#person-jon summary");
        look(keeper, "people");
        sees("jon", false, false);
        keeper.selectOption("#person-jon select[name=role]", "use");
        keeper.click("#person-jon form:first-of-type button");
        keeper.locator("#person-jon:has-text('uses it')").waitFor();
        sees("jon", true, false);
        sees("ida", true, true);
        keeper.navigate(chromium.address("/me"));
        look(keeper, "me");
        keeper.click(".who button");
        assertThat(keeper.locator(".who").innerText()).contains("Sign in");
        keeper.navigate(chromium.address("/crib/T-17"));
        assertThat(keeper.locator("h1").innerText()).isEqualTo("Who are you?");
        keeper.context().close();
        assertThat(chromium.complaints())
                .filteredOn(said -> !said.contains("status of 40"))
                .isEmpty();
    }

    private static void sees(String name, boolean log, boolean takeBackAndAdd) {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        page.navigate(chromium.address("/crib/T-17"));
        signIn(page, name, PASSWORD);
        assertThat(page.url()).endsWith("/crib/T-17");
        assertThat(page.locator("input[name=holes]").count()).isEqualTo(log ? 1 : 0);
        page.navigate(chromium.address("/crib"));
        assertThat(page.locator("input[name=mark]").count()).isEqualTo(takeBackAndAdd ? 1 : 0);
        page.navigate(chromium.address("/people"));
        assertThat(page.locator("h1").innerText())
                .isEqualTo(takeBackAndAdd ? "Who is let into the crib?" : "This is for those who keep the crib");
        page.context().close();
    }

    static void signIn(Page page, String name, String password) {
        page.fill("#give-name", name);
        page.fill("#give-password", password);
        page.click("form.given button.first");
    }

    private static void add(Page page, String name, String role, String password) {
        page.fill("form.given input[name=name]", name);
        page.selectOption("form.given select[name=role]", role);
        page.fill("form.given input[name=password]", password);
        page.click("form.given button.first");
    }

    /** A picture, and what holds for every page. */
    private static void look(Page page, String name) {
        Chromium.picture(page, name + "-390");
        assertThat(((Number) page.evaluate(
                                "() => document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                        .intValue())
                .as("%s scrolls sideways", name)
                .isLessThanOrEqualTo(0);
        assertThat((List<?>) page.evaluate(
                        "() => [...document.querySelectorAll('a, button, input:not([type=hidden]), select, summary')]"
                                + ".filter(e => e.checkVisibility() && !e.closest('.prose') && !e.closest('.lead')"
                                + " && !e.matches('.skip') && e.getBoundingClientRect().height < 43.5)"
                                + ".map(e => e.outerHTML.slice(0, 100))"))
                .as(name)
                .isEmpty();
        assertThat(new AxeBuilder(page)
                        .analyze().getViolations().stream()
                                .map(found -> found.getId() + " " + found.getNodes())
                                .toList())
                .as(name)
                .isEmpty();
    }
}
