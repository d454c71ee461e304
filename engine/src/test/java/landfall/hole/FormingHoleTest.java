// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import landfall.drill.Drawer;
import landfall.drill.DrillSeries;
import landfall.fault.Caution;
import landfall.material.Materials;
import landfall.tap.FluteKind;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The hole for a forming tap")
class FormingHoleTest {
    private static HoleWish forming(String callOut) {
        return HoleChoiceTest.wish(callOut).with(new HoleWish.Tools(null, null, null, FluteKind.FORMING));
    }

    /** 65 % by the rule: major less .442 P. */
    @ParameterizedTest(name = "{0}: hole {1} mm, drill {2}")
    @CsvSource({"M3x0.5, 2.779, 2.8 mm", "M8x1.25, 7.4475, 7.4 mm", "M10x1.5, 9.337, 9.3 mm", "M22x2, 21.116, 21 mm"})
    void isLargerThanThatForACuttingTap(String callOut, double wanted, String drill) {
        HoleChoice.Tools tools = HoleChoiceTest.hole(forming(callOut)).tools();
        assertThat(Objects.requireNonNull(tools.forming()).wanted().mm()).isCloseTo(wanted, within(1e-9));
        assertThat(tools.drill().drill().called()).isEqualTo(drill);
        assertThat(tools.drill().drill().diameter())
                .isGreaterThan(HoleChoiceTest.hole(HoleChoiceTest.wish(callOut))
                        .tools()
                        .drill()
                        .drill()
                        .diameter());
    }

    @Test
    void noUsualHoleIsUnderTheLimitThatTheTapJamsAt() {
        for (String callOut : new String[] {"M2x0.4", "M5x0.8", "M16x2", "1/4-20 UNC", "4-40 UNC", "3/4-10 UNC"}) {
            HoleChoice.Tools tools = HoleChoiceTest.hole(forming(callOut)).tools();
            assertThat(tools.drill().expected().low())
                    .as(callOut)
                    .isGreaterThanOrEqualTo(
                            Objects.requireNonNull(tools.forming()).least().mm());
        }
    }

    @Test
    void ironIsNotFormed() {
        HoleWish wish = forming("M8x1.25");
        HoleWish iron = new HoleWish(
                wish.callOut(),
                Materials.find("material", "EN-GJL-250").orThrow(),
                wish.place(),
                wish.tools(),
                wish.strengths(),
                null);
        assertThat(HoleChoiceTest.hole(iron).cautions().stream().map(Caution::code))
                .contains("notFormable");
    }

    @Test
    void drawersThatHoldOnlyThinDrillsAreRefusedWithTheMend() {
        HoleWish wish = HoleChoiceTest.wish("M30x3.5")
                .with(new HoleWish.Tools(DrillSeries.of(Drawer.LETTER), null, null, FluteKind.FORMING));
        assertThat(HoleChoice.of(wish).findings().get(0).sentence())
                .isEqualTo("drills: \"\" holds no drill large enough: below 27.918 mm (1.0991 in)"
                        + " a forming tap can jam. To"
                        + " mend: name more drawers.");
    }
}
