// SPDX-License-Identifier: Apache-2.0
package landfall.material;

import static org.assertj.core.api.Assertions.assertThat;

import landfall.fault.Finding;
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
}
