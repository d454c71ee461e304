// SPDX-License-Identifier: Apache-2.0
package landfall.cards.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import landfall.cards.Cards;
import landfall.cards.form.Entries;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.quantity.Limits;
import landfall.quantity.UnitSystem;
import landfall.tap.FluteKind;
import landfall.tap.Land;
import landfall.tap.Tap;
import landfall.tap.TapMaterial;
import landfall.tap.ThreadRelief;
import landfall.thread.Hand;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Tap cards")
class TapCardTest {
    static Answer<Tap> tap(Map<String, String> typed, UnitSystem bare) {
        return TapCard.FORM.judge(typed, bare).then(TapCard::tap);
    }

    static Map<String, String> m8(String... changes) {
        Map<String, String> typed = new LinkedHashMap<>(Cards.typed("tap-m8.json"));
        for (int i = 0; i < changes.length; i += 2) {
            if (changes[i + 1].isEmpty()) {
                typed.remove(changes[i]);
            } else {
                typed.put(changes[i], changes[i + 1]);
            }
        }
        return typed;
    }

    static List<String> refused(String... changes) {
        return tap(m8(changes), UnitSystem.METRIC).findings().stream()
                .map(Finding::sentence)
                .toList();
    }

    @Test
    void aChamferInThreadsIsMendedInThreads() {
        Map<String, String> typed = new LinkedHashMap<>(Cards.typed("tap-m8.json"));
        for (String text : List.of("plug", "1:1000")) {
            typed.put("chamfer.threads", text);
            assertThat(TapCard.FORM.judge(typed, UnitSystem.METRIC).findings())
                    .singleElement()
                    .satisfies(finding ->
                            assertThat(finding.mend()).contains("4 or 1.5").doesNotContain("0.001"));
        }
        typed.put("chamfer.threads", "99");
        assertThat(TapCard.FORM.judge(typed, UnitSystem.METRIC).findings())
                .extracting(Finding::sentence)
                .containsExactly("chamfer.threads: \"99\" must be from 0.2000 to 40 threads. "
                        + "To mend: count the threads of the chamfer, such as 4 or 1.5.");
    }

    @Test
    void everyFigureOfTheCardIsInTheTap() {
        Tap tap = tap(m8(), UnitSystem.METRIC).orThrow();
        assertThat(tap.callOut().normal()).isEqualTo("M8x1.25-6H");
        assertThat(tap.flutes().count()).isEqualTo(3);
        assertThat(tap.flutes().kind()).isEqualTo(FluteKind.STRAIGHT);
        assertThat(tap.flutes().form().core().mm()).isEqualTo(3.5);
        assertThat(tap.flutes().form().radius().mm()).isEqualTo(2.1);
        assertThat(tap.flutes().form().rake().deg()).isEqualTo(10);
        assertThat(tap.cutting().land()).isEqualTo(new Land.Arc(landfall.quantity.Length.ofMm(2.6)));
        assertThat(tap.landAngle().deg()).isCloseTo(Math.toDegrees(2.6 / 4), within(1e-9));
        assertThat(tap.chamfer().angle().deg()).isEqualTo(9);
        assertThat(tap.chamfer().pointDiameter().mm()).isEqualTo(6.4);
        assertThat(tap.body().threadLength().mm()).isEqualTo(22);
        assertThat(tap.body().overallLength().mm()).isEqualTo(72);
        assertThat(tap.body().shank().mm()).isEqualTo(8);
        assertThat(tap.body().backTaper()).isEqualTo(0.001);
        assertThat(tap.cutting().relief()).isEqualTo(ThreadRelief.NONE);
        assertThat(tap.pitch().limit()).isEqualTo(Limits.ofMm(7.226, 7.25));
        assertThat(tap.pitch().least().threadLength().mm()).isEqualTo(11);
        assertThat(tap.pitch().least().landAngle().deg()).isEqualTo(30);
        assertThat(tap.pitch().least().pitchDiameter().mm()).isEqualTo(7.21);
        assertThat(tap.make().material()).isEqualTo(TapMaterial.HSS);
    }

    @Test
    void anInchCardReadsItsFractionsAndBareDecimalsAsInches() {
        Tap tap = tap(Cards.typed("tap-half-13-worn.json"), UnitSystem.INCH).orThrow();
        assertThat(tap.body().threadLength().inch()).isCloseTo(1 + 21.0 / 32, within(1e-12));
        assertThat(tap.body().shank().inch()).isCloseTo(0.367, within(1e-12));
        assertThat(tap.pitch().limit().max().inch()).isCloseTo(0.4515, within(1e-12));
        assertThat(tap.cutting().relief().kind()).isEqualTo(ThreadRelief.Kind.CON_ECCENTRIC);
        assertThat(tap.chamfer().threads()).isEqualTo(4);
    }

    @Test
    void theHandComesFromTheCallOut() {
        assertThat(tap(Cards.typed("tap-m10-left-hand.json"), UnitSystem.METRIC)
                        .orThrow()
                        .thread()
                        .hand())
                .isEqualTo(Hand.LEFT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tap-m8.json", "tap-half-13-worn.json", "tap-m10-left-hand.json"})
    void aCardWrittenBackReadsTheSame(String name) {
        Map<String, String> typed = Cards.typed(name);
        assertThat(TapCard.read(TapCard.write(typed)).orThrow()).isEqualTo(typed);
    }

    @Test
    void aMarkedLimitIsATextOnTheCard() {
        Map<String, String> typed = m8("limit.pitchMin", "", "limit.pitchMax", "", "limit", "class 2");
        assertThat(TapCard.write(typed)).contains("\"limit\" : \"class 2\"");
        assertThat(TapCard.read(TapCard.write(typed)).orThrow()).isEqualTo(typed);
    }

    /** M8: t of grade 5 is 125 micrometres; class 2 is 0.3 to 0.5 of it over the basic 7.1881 mm. */
    @Test
    void aMarkedLimitBecomesTheTapsOwn() {
        Tap tap = tap(m8("limit.pitchMin", "", "limit.pitchMax", "", "limit", "class 2"), UnitSystem.METRIC)
                .orThrow();
        assertThat(tap.pitch().limit().min().mm()).isCloseTo(7.1881 + 0.0375, within(0.0001));
        assertThat(tap.pitch().limit().max().mm()).isCloseTo(7.1881 + 0.0625, within(0.0001));
        assertThat(refused("limit.pitchMin", "", "limit.pitchMax", "", "limit", "H3"))
                .containsExactly("limit: \"H 3\" must be D or class on a metric thread. "
                        + "To mend: read the mark again, or give limit.pitchMin and limit.pitchMax.");
        assertThat(refused("limit.pitchMin", "", "limit.pitchMax", "", "limit", "6HX"))
                .containsExactly("limit: \"6HX\" is no mark of a limit. "
                        + "To mend: write H3, L2, D5 or class 2, or give limit.pitchMin.");
        assertThat(refused("limit", "class 2"))
                .containsExactly("limit: \"class 2\" cannot stand beside measured limits. "
                        + "To mend: give the mark, or limit.pitchMin and limit.pitchMax.");
    }

    @Test
    void everyBadPartIsFoundAtOnce() {
        assertThat(refused(
                        "flutes.helix", "5 deg",
                        "chamfer.threads", "7",
                        "threadRelief.slope", "1 deg",
                        "limit.pitchMin", "7.3 mm"))
                .containsExactly(
                        "flutes.helix: \"5.0 deg\" must be 0 deg on straight flutes. "
                                + "To mend: leave helix out, or give the kind spiral-right or spiral-left.",
                        "chamfer.threads: \"7.0\" must be 4.04, as angle and point diameter make it (within 1 %). "
                                + "To mend: leave one of the three out.",
                        "threadRelief.slope: \"1 deg\" must be 0 on a concentric thread. "
                                + "To mend: give the kind eccentric or con-eccentric, or leave the slope out.",
                        "limit.pitchMin: \"7.3 mm\" is over limit.pitchMax. To mend: swap the two.");
    }

    @Test
    void threeOfTheChamferAreTakenWhenTheyAgreeWithinOnePercent() {
        assertThat(refused("chamfer.threads", "4.05")).isEmpty();
        assertThat(refused("chamfer.threads", "4.10")).hasSize(1);
    }

    @Test
    void oneOfTheChamferIsTooFew() {
        assertThat(refused("chamfer.angle", ""))
                .containsExactly("chamfer: \"fewer than two figures\" must be two of angle, pointDiameter and threads. "
                        + "To mend: measure the chamfer's angle and the diameter at the point.");
    }

    @Test
    void aLandToldTwiceMustAgree() {
        assertThat(refused("land.angle", "37.2 deg")).isEmpty();
        assertThat(refused("land.angle", "40 deg"))
                .containsExactly("land: \"37.24 deg and 40.00 deg\" is told in two ways that part by more than 1 %. "
                        + "To mend: give one of width, chord and angle.");
    }

    @Test
    void theLandIsNeededWithARakeAndCanBeLeftOutWithout() {
        assertThat(refused("land.width", ""))
                .containsExactly("land.width: \"\" is needed when flutes.rake is given. "
                        + "To mend: measure one land, edge to heel.");
        assertThat(refused("land.width", "", "flutes.rake", "", "flutes.radius", "2.6 mm"))
                .isEmpty();
    }

    @Test
    void anUnknownKeyIsRefusedWithTheNearest() {
        assertThat(refused("chamfer.pointdiam", "6 mm"))
                .containsExactly("chamfer.pointdiam: \"6 mm\" is not a field of tap-card. "
                        + "To mend: write chamfer.pointDiameter, the nearest, or leave it out.");
    }

    @Test
    void noCardBreaksTheReader() {
        Random random = new Random(20);
        String[] texts = {
            "0", "-1", "7.3 mm", "1e9", "90 deg", "spiral-left", "", "x", "1/4-20 UNC", "999999 mm", "2", "0.0001", "½"
        };
        List<String> paths = TapCard.FORM.paths();
        for (int i = 0; i < 4_000; i++) {
            Map<String, String> typed = m8();
            for (int change = random.nextInt(1, 5); change > 0; change--) {
                typed.put(paths.get(random.nextInt(paths.size())), texts[random.nextInt(texts.length)]);
            }
            Entries entries =
                    TapCard.FORM.judge(typed, UnitSystem.METRIC) instanceof Answer.Of<Entries> of ? of.value() : null;
            if (entries != null) {
                assertThat(TapCard.tap(entries).findings())
                        .allSatisfy(finding -> assertThat(finding.mend()).isNotBlank());
            }
        }
    }
}
