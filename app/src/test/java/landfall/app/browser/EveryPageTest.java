// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.app.cut.CutExample;
import landfall.app.example.Examples;
import landfall.history.JobNumber;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * What holds for every page: nothing for axe to find, no sideways scrolling on a phone, targets that a glove can hit.
 */
class EveryPageTest {
    private static Chromium chromium;

    @BeforeAll
    static void open() {
        chromium = new Chromium();
        FilledCrib.into(chromium.store());
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        page.navigate(chromium.address("/crib"));
        page.fill("form[method=post] input[name=thread]", "M8x1.25-6H");
        page.fill("form[method=post] input[name=mark]", "T-17");
        page.click("form[method=post] button");
        page.fill("input[name=holes]", "40");
        page.fill("input[name=by]", "Ida");
        page.click("form.given button.first");
        page.locator(".done").waitFor();
        page.navigate(chromium.address("/job"));
        page.click("text=Paste a table");
        page.fill("[name=paste]", Examples.text("job-bearing-block.csv"));
        page.click("button[value=paste]");
        page.click("button[formaction='/job']");
        page.context().close();
    }

    @AfterAll
    static void close() {
        chromium.close();
    }

    static Map<String, String> pages() {
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("today", "/");
        pages.put("thread-empty", "/thread");
        pages.put("thread", "/thread?thread=M8x1.25-6H");
        pages.put("thread-inch", "/thread?thread=1%2F4-20+UNC-2A");
        pages.put("thread-refused", "/thread?thread=M8x1.35-6H");
        pages.put("grind-empty", "/grind");
        pages.put("grind-refused", "/grind?thread=M8x1.25&flutes.count=three&cam.lobes=4");
        for (Examples.Example example : Examples.all()) {
            pages.put("grind-" + example.tapFile().replace(".json", ""), example.address());
        }
        holes(pages);
        taps(pages);
        gauges(pages);
        pages.put("crib", "/crib");
        pages.put("crib-due", "/crib/due");
        pages.put("crib-charts", "/crib/W-1?price=20+EUR&sharpening=6+EUR&spoilt=40+EUR&holes=40");
        pages.put("crib-set", "/crib/DUE");
        pages.put("people-alone", "/people");
        pages.put("crib-thing", "/crib/T-17?event=tapped");
        pages.put("job", "/job");
        pages.put("what-if", "/what-if");
        pages.put("what-if-hole", "/what-if?question=hole&thread=M8x1.25-6H&depth=16+mm");
        pages.put("job-kept", "/job/" + JobNumber.numbered(1));
        pages.put("methods", "/methods");
        pages.put("sources", "/methods/sources");
        pages.put("trouble", "/nowhere");
        return pages;
    }

    private static void holes(Map<String, String> pages) {
        pages.put("hole-inch", "/hole?thread=1%2F4-20+UNC-2B&depth=1%2F2&end=through");
        pages.put("cut-empty", "/cut");
        for (CutExample example : CutExample.all()) {
            pages.put("cut-" + example.name().replaceAll("[^A-Za-z0-9]+", "-"), example.address());
        }
        pages.put("why-empty", "/why");
        pages.put("hole", "/hole?thread=M8x1.25-6H&depth=16+mm&blind=yes");
        pages.put("tap", "/tap?thread=M8x1.25-6H&depth=16+mm&blind=yes");
        pages.put("why", "/why?symptom=torn-flank&callout=M8x1.25-6H");
        pages.put("broken", "/why/broken?thread=M8x1.25-6H&worth=high");
    }

    private static void taps(Map<String, String> pages) {
        pages.put("body", Examples.all().get(0).address().replace("/grind?", "/grind/body?"));
        pages.put("identify", "/identify?major=.2545&tpi=20");
        String tap = Examples.all().get(1).address().replaceAll("&?(cam|wheel|dial|swivel|name)[^&]*", "");
        for (String question : List.of("life", "decide", "inspect")) {
            String own = question.equals("inspect") ? tap.replaceAll("&?wear=[^&]*", "") : tap;
            pages.put(question, own.replace("/grind?", "/grind/" + question + "?"));
        }
        pages.put("dial-empty", "/grind/dial");
        String readings = URLEncoder.encode(Examples.text("readings-m10.csv").strip(), StandardCharsets.UTF_8);
        String m10 = Examples.all().get(2).address().replace("/grind?", "/grind/dial?");
        pages.put("dial", m10 + "&readings=" + readings);
        pages.put("dial-refused", m10 + "&readings=1+0+zero");
    }

    private static void gauges(Map<String, String> pages) {
        pages.put("gauge-empty", "/gauge");
        pages.put("gauge", "/gauge?thread=1%2F4-20+UNC-2A&wire=.0289&over=.2625");
        pages.put("gauge-anvil", "/gauge?thread=M10x1.5&flutes=3&reading=10.2&crest=10.05");
        pages.put("gauge-verdict", "/gauge?thread=1/4-20+UNC-2B&go=yes&go-turns=6&not-go-turns=1");
        pages.put("marking", "/marking?marking=1/4-20+UNC+GH3+HSS");
        pages.put("tap-empty", "/tap");
        pages.put("identify-empty", "/identify");
        for (String callOut : List.of("1/2-14 NPT", "1/2-10 ACME", "STI M8")) {
            pages.put(
                    "thread-" + callOut.replaceAll("\\W", ""),
                    "/thread?thread=" + URLEncoder.encode(callOut, StandardCharsets.UTF_8));
        }
    }

    @Test
    void axeFindsNothingAndNothingScrollsSidewaysOnTheDeskInLightAndOnThePhoneInDark() {
        Map<String, List<String>> found = new LinkedHashMap<>();
        visit(Chromium.DESKTOP, ColorScheme.LIGHT, found);
        visit(Chromium.PHONE, ColorScheme.DARK, found);
        assertThat(found).isEmpty();
        assertThat(chromium.complaints())
                .filteredOn(said -> !said.contains("404"))
                .isEmpty();
    }

    /** Each page once: a picture for people to look at, then all of it opened and given to axe. */
    private static void visit(int width, ColorScheme scheme, Map<String, List<String>> found) {
        Page page = chromium.page(width, scheme);
        pages().forEach((name, path) -> {
            page.navigate(chromium.address(path));
            Object over =
                    page.evaluate("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
            if (((Number) over).intValue() > 0) {
                found.put(name + " is wider than the window of " + width, List.of(String.valueOf(over)));
            }
            Chromium.picture(page, name + "-" + width + (scheme == ColorScheme.DARK ? "-dark" : ""));
            openEverything(page);
            List<String> violations = new AxeBuilder(page)
                    .analyze().getViolations().stream()
                            .map(EveryPageTest::words)
                            .toList();
            if (!violations.isEmpty()) {
                found.put(name + " " + width + " " + scheme, violations);
            }
        });
        page.context().close();
    }

    @Test
    void theDuePageShowsSetsAndGaugesAndATapWhoseMarkIsDueOpensAllTheSame() {
        Page page = chromium.page(Chromium.PHONE, ColorScheme.LIGHT);
        page.navigate(chromium.address("/crib/due"));
        String due = page.locator("section.sheet").first().innerText();
        assertThat(due)
                .contains("SET-A", "DUE", "lent or gone: S-3")
                .contains("\u25a0 over for", "do not pass work by it")
                .contains("\u25b3 20 days more");
        page.locator("a:text-is('G-1')").click();
        assertThat(page.locator("h1").innerText()).startsWith("G-1");
        page.navigate(chromium.address("/crib/DUE"));
        assertThat(page.locator("h1").innerText()).startsWith("DUE");
        page.navigate(chromium.address("/crib/W-1?price=20+EUR&sharpening=6+EUR&spoilt=40+EUR"));
        assertThat(page.locator("#teaching .drawing svg").count()).isEqualTo(2);
        page.context().close();
    }

    @Test
    void everyTargetIsLargeEnoughForAGlove() {
        Page page = chromium.page(Chromium.PHONE, ColorScheme.LIGHT);
        Map<String, Object> wrong = new LinkedHashMap<>();
        pages().forEach((name, path) -> {
            page.navigate(chromium.address(path));
            List<?> small = (List<?>) page.evaluate("""
                    () => [...document.querySelectorAll('a, button, input:not([type=file]):not([type=checkbox]), select, summary')]
                      .filter(e => e.checkVisibility() && !e.closest('.prose') && !e.matches('.skip'))
                      .filter(e => e.getBoundingClientRect().height < 43.5)
                      .map(e => e.outerHTML.slice(0, 120))
                    """);
            if (!small.isEmpty()) {
                wrong.put(name + " has targets under 44 px", small);
            }
        });
        assertThat(wrong).isEmpty();
    }

    @Test
    void everyIdStandsOnceInItsPage() {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        pages().forEach((name, path) -> {
            page.navigate(chromium.address(path));
            assertThat((List<?>) page.evaluate("() => { const seen = new Set(); return"
                            + " [...document.querySelectorAll('[id]')].map(e => e.id)"
                            + ".filter(id => seen.size === seen.add(id).size) }"))
                    .as("ids that stand twice on %s", name)
                    .isEmpty();
        });
    }

    /** Working that is closed is not looked at. */
    private static void openEverything(Page page) {
        page.evaluate("() => document.querySelectorAll('details').forEach(d => d.open = true)");
    }

    private static String words(Rule violation) {
        return violation.getId() + ": " + violation.getHelp() + " "
                + violation.getNodes().stream()
                        .limit(3)
                        .map(node -> node.getHtml())
                        .toList();
    }
}
