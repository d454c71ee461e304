// SPDX-License-Identifier: Apache-2.0
package landfall.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import landfall.fault.Finding;
import landfall.quantity.Speed;
import landfall.working.Trust;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Work materials")
class MaterialsTest {
    @Test
    void aMaterialIsFoundByAnyOfItsNames() {
        String id = Materials.find("material", "1045").orThrow().id();
        assertThat(Materials.find("material", "c45").orThrow().id()).isEqualTo(id);
        assertThat(Materials.find("material", "C 45 E").orThrow().id()).isEqualTo(id);
        assertThat(Materials.find("material", "EN-GJL-250").orThrow().id()).isEqualTo("Class 30-40 grey iron");
    }

    @Test
    void noNameStandsForTwoMaterials() {
        for (WorkMaterial material : Materials.all()) {
            assertThat(Materials.find("material", material.id()).orThrow()).isEqualTo(material);
            for (String name : material.names()) {
                assertThat(Materials.find("material", name).orThrow()).as(name).isEqualTo(material);
            }
        }
    }

    @Test
    void anUnknownOneIsRefusedWithTheNearest() {
        Finding finding = Materials.find("material", "6061T4").findings().get(0);
        assertThat(finding.why()).isEqualTo("is not in the list of materials");
        assertThat(finding.mend()).startsWith("the nearest are 6061-T6 (EN AW-6061 T6);");
    }

    @Test
    void reliefRangesAreInOrder() {
        assertThat(Materials.all()).isNotEmpty().allSatisfy(material -> {
            assertThat(material.relief().least())
                    .isLessThanOrEqualTo(material.relief().greatest());
            assertThat(material.relief().middle().deg()).isBetween(3.0, 12.0);
        });
    }

    @Test
    void everyFigureHasItsSourceAndTrust() {
        assertThat(Materials.all()).hasSizeGreaterThan(30).allSatisfy(material -> {
            List<Marked<?>> figures = List.of(
                    material.cutting().pressure(),
                    material.cutting().chip(),
                    material.cutting().rake(),
                    material.cutting().speed(),
                    material.cutting().fluid(),
                    material.shear());
            for (Marked<?> figure : figures) {
                assertThat(figure.source().key()).as(material.id()).isNotBlank();
                assertThat(figure.trust()).as(material.id()).isIn(Trust.HANDBOOK, Trust.PRACTICE, Trust.ESTIMATE);
            }
        });
    }

    /** Speeds of the dealer's table for mild steel, 30 to 50 ft/min; 0.3048 m to the foot. */
    @Test
    void speedsAreTheTablesTurnedToMetres() {
        Between<Speed> speed =
                Materials.find("material", "1018").orThrow().cutting().speed().value();
        assertThat(speed.least().ftPerMin()).isCloseTo(30, within(0.5));
        assertThat(speed.greatest().ftPerMin()).isCloseTo(50, within(1.0));
    }

    @Test
    void pressureAndStrengthAreThoseOfMetalsAndPlastics() {
        assertThat(Materials.all()).allSatisfy(material -> {
            CuttingPressure pressure = material.cutting().pressure().value();
            assertThat(pressure.atOneMm().nPerMm2()).as(material.id()).isBetween(100.0, 3400.0);
            assertThat(pressure.exponent()).as(material.id()).isBetween(0.14, 0.30);
            assertThat(material.shear().value().least().nPerMm2())
                    .as(material.id())
                    .isBetween(50.0, 900.0);
        });
    }

    /**
     * Kienzle's pressure grows as the chip thins: softer groups of one family lie under harder ones at one thickness.
     */
    @Test
    void harderMaterialsOfAFamilyPressMore() {
        assertThat(at("1018", 0.05)).isLessThan(at("1045", 0.05));
        assertThat(at("1045", 0.05)).isLessThan(at("O1 annealed", 0.05));
        assertThat(at("AZ91", 0.05)).isLessThan(at("380 die cast", 0.05));
        assertThat(at("POM acetal", 0.05)).isLessThan(at("AZ91", 0.05));
    }

    @Test
    void noFluidWithWaterIsAdvisedOnMagnesium() {
        assertThat(Materials.all())
                .filteredOn(material -> material.group() == WorkGroup.MAGNESIUM)
                .isNotEmpty()
                .allSatisfy(material -> assertThat(
                                material.cutting().fluid().value().fluid().hasWater())
                        .isFalse());
    }

    @Test
    void everyGroupHasAMaterial() {
        assertThat(Materials.all().stream().map(WorkMaterial::group)).contains(WorkGroup.values());
    }

    private static double at(String id, double thicknessMm) {
        CuttingPressure pressure =
                Materials.find("material", id).orThrow().cutting().pressure().value();
        return pressure.atOneMm().nPerMm2() * Math.pow(thicknessMm, -pressure.exponent());
    }

    @Test
    void aNameThatHoldsWhatWasTypedComesFirst() {
        assertThat(Materials.find("material", "4140").findings().get(0).mend())
                .contains("4140 annealed")
                .contains("4140 Q+T 300 HB");
        assertThat(Materials.find("material", "grey iron").findings().get(0).mend())
                .contains("grey iron");
    }
}
