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
import landfall.grind.CamCurve;
import landfall.grind.Fixture;
import landfall.quantity.Angle;
import landfall.quantity.Limits;
import landfall.quantity.UnitSystem;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Fixture and shop cards")
class FixtureCardTest {
    static Answer<Fixture> fixture(String... changes) {
        return FixtureCard.FORM.judge(typed(changes), UnitSystem.METRIC).then(FixtureCard::fixture);
    }

    static Map<String, String> typed(String... changes) {
        Map<String, String> typed = new LinkedHashMap<>(Cards.typed("fixture-three-lobes.json"));
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
        return fixture(changes).findings().stream().map(Finding::sentence).toList();
    }

    @Test
    void everyFigureOfTheCardIsInTheFixture() {
        Fixture fixture = fixture().orThrow();
        assertThat(fixture.name()).isEqualTo("shop relieving fixture");
        assertThat(fixture.cam().lobes()).isEqualTo(3);
        assertThat(fixture.cam().curve()).isEqualTo(new CamCurve.Straight());
        assertThat(fixture.cam().lobe().riseStart()).isEqualTo(Angle.ZERO);
        assertThat(fixture.cam().lobe().riseAngle().deg()).isEqualTo(60);
        assertThat(fixture.cam().lobe().returnAngle().deg()).isEqualTo(30);
        assertThat(fixture.cam().axial()).isEqualTo(Limits.ofMm(0, 3));
        assertThat(fixture.cam().radial()).isEqualTo(Limits.ofMm(0, 0.8));
        assertThat(fixture.wheel().diameter().mm()).isEqualTo(150);
        assertThat(fixture.wheel().marking()).isEqualTo("A80J6V");
        assertThat(fixture.wheel().markedSpeed().revPerMin()).isEqualTo(4000);
        assertThat(fixture.wheel().spindle().revPerMin()).isEqualTo(3200);
        assertThat(fixture.dialResolution().mm()).isEqualTo(0.01);
        assertThat(fixture.swivelStep().deg()).isEqualTo(0.25);
    }

    /** 6500 ft/min on a 6 in wheel: 6500 x 12 / (pi x 6) = 4138 rev/min. */
    @Test
    void aRimSpeedMarkedOnTheWheelCountsAtItsDiameter() {
        Fixture fixture = FixtureCard.FORM
                .judge(Cards.typed("fixture-four-lobes.json"), UnitSystem.INCH)
                .then(FixtureCard::fixture)
                .orThrow();
        assertThat(fixture.wheel().markedSpeed().revPerMin()).isCloseTo(6500 * 12 / (Math.PI * 6), within(1e-6));
        assertThat(fixture.cam().radial().max().inch()).isCloseTo(0.045, within(1e-12));
        assertThat(fixture.swivelStep().deg()).isEqualTo(0.25);
    }

    @Test
    void aCamCanBeToldPlaceByPlace() {
        Fixture fixture = fixture("cam.curve", "points", "cam.table", "0 deg 0, 30 deg 0.4, 60 deg 1")
                .orThrow();
        assertThat(fixture.cam().curve().share(Angle.ofDeg(30), Angle.ofDeg(60)))
                .isEqualTo(0.4);
    }

    /** Offset 1 mm, 90 deg ahead, over 60 deg: 1 x (cos 90 - cos 150) = 0.866 mm. */
    @Test
    void aCircleCamWithoutARadialReachHasThatOfItsOffset() {
        Fixture fixture = fixture(
                        "cam.curve",
                        "circle",
                        "cam.offset",
                        "1 mm",
                        "cam.phase",
                        "90 deg",
                        "cam.radial.from",
                        "",
                        "cam.radial.to",
                        "")
                .orThrow();
        assertThat(fixture.cam().radial().max().mm()).isCloseTo(Math.sqrt(3) / 2, within(1e-12));
    }

    @Test
    void everyBadPartIsFoundAtOnce() {
        assertThat(refused(
                        "cam.table",
                        "0 deg 0, 60 deg 1",
                        "cam.axial.from",
                        "",
                        "cam.radial.from",
                        "0.9 mm",
                        "wheel.spindle",
                        "5000 rev/min"))
                .containsExactly(
                        "cam.table: \"0 deg 0, 60 deg 1\" belongs to the curve points. "
                                + "To mend: give cam.curve points, or leave it out.",
                        "cam.axial.from: \"\" is needed beside the other end. "
                                + "To mend: give a length: 11.5 mm, 27/64, .4375, 6 thou.",
                        "cam.radial.from: \"0.9 mm\" is over cam.radial.to. To mend: swap the two.",
                        "wheel.spindle: \"5000 rev/min\" must be at most the 4000 rev/min marked on the wheel. "
                                + "To mend: set a slower spindle speed or mount a wheel marked for this one; "
                                + "a wheel over its mark can burst.");
    }

    @Test
    void aFixtureThatRisesNowhereIsRefused() {
        assertThat(refused("cam.axial.from", "", "cam.axial.to", "", "cam.radial.from", "", "cam.radial.to", ""))
                .containsExactly("cam: \"neither axial nor radial\" must be axial, radial or both. "
                        + "To mend: give what the fixture can rise over one lobe.");
    }

    @Test
    void aBadCamTableIsRefusedWithItsPlace() {
        assertThat(refused("cam.curve", "points", "cam.table", "0 deg 0, thirty 0.5"))
                .containsExactly("cam.table: \"thirty\" is not an angle. To mend: write 2.5 deg or 2°30'.");
        assertThat(refused("cam.curve", "points", "cam.table", "0 deg 0, 30 deg 1"))
                .containsExactly(
                        "cam.table: \"ends at 30.000 deg\" must be one that ends at the rise angle, 60.000 deg. "
                                + "To mend: give the table over the whole rise.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"fixture-three-lobes.json", "fixture-four-lobes.json"})
    void aCardWrittenBackReadsTheSame(String name) {
        Map<String, String> typed = Cards.typed(name);
        assertThat(FixtureCard.read(FixtureCard.write(typed)).orThrow()).isEqualTo(typed);
    }

    @Test
    void aTableWrittenBackReadsTheSame() {
        Map<String, String> typed = typed("cam.curve", "points", "cam.table", "0 deg 0, 30 deg 0.4, 60 deg 1");
        assertThat(FixtureCard.write(typed)).contains("\"angle\" : \"30 deg\"");
        assertThat(FixtureCard.read(FixtureCard.write(typed)).orThrow()).isEqualTo(typed);
    }

    @Test
    void theShopCardIsReadAndWrittenBack() {
        Map<String, String> typed = Cards.typed("shop.json");
        Entries shop = ShopCard.judge(typed).orThrow();
        assertThat(shop.get(ShopCard.UNITS)).contains(UnitSystem.INCH);
        assertThat(shop.get(ShopCard.DRILLS)).contains(List.of("number", "letter", "fraction", "metric"));
        assertThat(Flat.read(CardJson.write(ShopCard.FORM, typed)).orThrow()).isEqualTo(typed);
        assertThat(ShopCard.judge(Map.of("currency", "dollars", "drills", "numbers"))
                        .findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "currency: \"dollars\" is not a currency of three letters. To mend: write it like USD or EUR.",
                        "drills: \"numbers\" must be one of number, letter, fraction, metric, inch. "
                                + "To mend: write number.");
    }

    @Test
    void noFixtureBreaksTheReader() {
        Random random = new Random(21);
        String[] texts = {
            "0",
            "-1",
            "7.3 mm",
            "90 deg",
            "points",
            "circle",
            "",
            "x",
            "359 deg",
            "1 in",
            "0 deg 0, 60 deg 1",
            "35 m/s",
            "3"
        };
        List<String> paths = FixtureCard.FORM.paths();
        for (int i = 0; i < 20_000; i++) {
            Map<String, String> typed = typed();
            for (int change = random.nextInt(1, 5); change > 0; change--) {
                typed.put(paths.get(random.nextInt(paths.size())), texts[random.nextInt(texts.length)]);
            }
            assertThat(FixtureCard.FORM
                            .judge(typed, UnitSystem.INCH)
                            .then(FixtureCard::fixture)
                            .findings())
                    .allSatisfy(finding -> assertThat(finding.mend()).isNotBlank());
        }
    }
}
