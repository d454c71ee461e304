// SPDX-License-Identifier: Apache-2.0
package landfall.salvage;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import landfall.fault.Caution;
import landfall.hole.HoleEnd;
import landfall.material.Materials;
import landfall.material.WorkMaterial;
import landfall.quantity.Length;
import landfall.salvage.BrokenTap.Part;
import landfall.salvage.BrokenTap.Stump;
import landfall.tap.FluteKind;
import landfall.tap.TapMaterial;
import landfall.thread.callout.CallOuts;
import landfall.working.WorkingCheck;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Getting a broken tap out")
class SalvageTest {
    private static WorkMaterial material(String name) {
        return Materials.find("material", name).orThrow();
    }

    private static Stump stump(int flutes, @Nullable Length proud) {
        return new Stump(TapMaterial.HSS, flutes, FluteKind.STRAIGHT, proud);
    }

    private static Salvage salvage(String thread, Part part, Stump stump, @Nullable Worth worth) {
        return Salvage.of(new BrokenTap(CallOuts.read(thread).orThrow(), part, stump, worth))
                .value();
    }

    private static Part blind(String material, double depth) {
        return new Part(material(material), Length.ofMm(depth), HoleEnd.BLIND);
    }

    private static List<String> order(Salvage salvage) {
        return salvage.ways().stream()
                .filter(WayOut::fits)
                .map(out -> out.way().code())
                .toList();
    }

    private static List<String> ruledOut(Salvage salvage) {
        return salvage.ways().stream()
                .filter(out -> !out.fits())
                .map(out -> out.way().code())
                .toList();
    }

    /** M8, 3 flutes: core 3.04 to 3.60; minor 8 - 1.0825*1.25 = 6.647. */
    @Test
    void theToolLiesBetweenCoreAndThread() {
        Salvage m8 = salvage("M8x1.25-6H", blind("C45", 16), stump(3, null), Worth.MIDDLE);
        assertThat(requireNonNull(m8.sizes().core().min()).mm()).isCloseTo(3.04, within(1e-9));
        assertThat(requireNonNull(requireNonNull(m8.sizes().tool()).min()).mm()).isCloseTo(3.60, within(1e-9));
        assertThat(requireNonNull(requireNonNull(m8.sizes().tool()).max()).mm()).isCloseTo(6.6468, within(1e-4));
        var insert = m8.sizes().insert().orElseThrow();
        assertThat(requireNonNull(insert.minor().min()).mm()).isCloseTo(8.271, within(1e-9));
        assertThat(requireNonNull(insert.minor().max()).mm()).isCloseTo(8.483, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "M5x0.8-6H, LOW, again",
        "M4x0.7-6H, MIDDLE, spark",
        "M5x0.8-6H, HIGH, spark",
        "M12x1.75-6H, LOW, again",
        "M12x1.75-6H, MIDDLE, extractor",
        "M12x1.75-6H, HIGH, spark"
    })
    void sizeAndWorthTurnTheOrder(String thread, Worth worth, String first) {
        List<String> order = order(salvage(thread, blind("C45", 20), stump(3, Length.ZERO), worth));
        assertThat(order.get(0)).isEqualTo(first);
        assertThat(order.indexOf("shatter") < order.indexOf("bore")).isEqualTo(worth != Worth.HIGH);
    }

    @Test
    void aStubThatCanBeGrippedComesFirst() {
        Salvage proud = salvage("M8x1.25-6H", blind("C45", 16), stump(3, Length.ofMm(6)), Worth.HIGH);
        assertThat(order(proud).get(0)).isEqualTo("stub");
        Salvage flush = salvage("M8x1.25-6H", blind("C45", 16), stump(3, Length.ZERO), Worth.HIGH);
        assertThat(ruledOut(flush))
                .contains("stub", "behind", "soften", "dissolve")
                .doesNotContain("spark");
    }

    @Test
    void whatTheMaterialForbidsIsRuledOutWithItsReason() {
        Salvage magnesium = salvage("M8x1.25-6H", blind("AZ91", 16), stump(3, Length.ZERO), Worth.MIDDLE);
        assertThat(ruledOut(magnesium)).contains("weld", "dissolve");
        assertThat(magnesium.ways())
                .filteredOn(out -> out.way().code().equals("weld"))
                .flatExtracting(WayOut::against)
                .contains("Never an arc on magnesium: it burns.");
        assertThat(magnesium.cautions()).extracting(Caution::code).contains("magnesium", "acid", "shards");
        assertThat(ruledOut(salvage("M8x1.25-6H", blind("POM acetal", 16), stump(3, Length.ZERO), Worth.HIGH)))
                .contains("spark", "weld");
        assertThat(order(salvage("M3x0.5-6H", blind("6061-T6", 6), stump(3, Length.ZERO), Worth.HIGH)))
                .startsWith("spark")
                .contains("dissolve");
    }

    @Test
    void whatTheTapForbidsIsRuledOut() {
        Stump carbide = new Stump(TapMaterial.CARBIDE, 4, FluteKind.STRAIGHT, Length.ZERO);
        Salvage salvage = salvage("M8x1.25-6H", blind("EN-GJL-250", 12), carbide, Worth.MIDDLE);
        assertThat(ruledOut(salvage)).contains("extractor", "mill", "weld", "soften", "dissolve");
        assertThat(order(salvage)).startsWith("shatter");
        Stump forming = new Stump(TapMaterial.HSS, null, FluteKind.FORMING, Length.ZERO);
        Salvage formed = salvage("M8x1.25-6H", blind("C45", 12), forming, Worth.MIDDLE);
        assertThat(ruledOut(formed)).contains("extractor");
        assertThat(formed.sizes().tool()).isNull();
        assertThat(formed.cautions()).extracting(Caution::code).contains("noToolBetween");
        Stump carbon = new Stump(TapMaterial.CARBON, 4, FluteKind.STRAIGHT, Length.ZERO);
        assertThat(order(salvage("M8x1.25-6H", blind("C45", 12), carbon, Worth.MIDDLE)))
                .contains("soften");
    }

    @Test
    void aDeepHoleSpeaksAgainstAMillAndAThroughHoleForTheFarSide() {
        Salvage deep = salvage("M6x1-6H", blind("C45", 24), stump(3, Length.ZERO), Worth.MIDDLE);
        assertThat(deep.ways())
                .filteredOn(out -> out.way().code().equals("mill"))
                .flatExtracting(WayOut::against)
                .contains("10 times as deep as the core is thick: a long thin mill walks and breaks.");
        Part through = new Part(material("C45"), Length.ofMm(8), HoleEnd.THROUGH);
        assertThat(order(salvage("M6x1-6H", through, stump(3, Length.ZERO), Worth.MIDDLE)))
                .contains("behind");
    }

    @Test
    void aPartOfHighWorthIsToldWhenToStop() {
        assertThat(salvage("M8x1.25-6H", Part.UNTOLD, Stump.UNTOLD, Worth.HIGH).cautions())
                .extracting(Caution::code)
                .contains("stopAndCall", "materialAssumed", "coreAssumed");
        assertThat(salvage("M8x1.25-6H", Part.UNTOLD, Stump.UNTOLD, null).cautions())
                .extracting(Caution::code)
                .contains("worthAssumed")
                .doesNotContain("stopAndCall");
    }

    @Test
    void everyWayIsWeighedWithASentenceAndEveryFormulaGivesItsFigure() {
        for (String thread : List.of("M8x1.25-6H", "1/4-20 UNC-2B", "G 1/2", "1/2-14 NPT", "Tr20x4-7H", "M8x1.25-6g")) {
            BrokenTap broken = new BrokenTap(CallOuts.read(thread).orThrow(), Part.UNTOLD, Stump.UNTOLD, null);
            var worked = Salvage.of(broken);
            WorkingCheck.everyFormulaGivesItsFigure(worked.steps());
            assertThat(worked.value().ways())
                    .hasSize(11)
                    .allSatisfy(out -> assertThat(
                                    out.reasons().size() + out.against().size())
                            .as(out.way().code())
                            .isPositive());
        }
    }
}
