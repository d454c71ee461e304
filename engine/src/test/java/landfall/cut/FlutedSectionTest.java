// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Random;
import landfall.fault.OutOfRange;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.ChamferGiven;
import landfall.tap.Cutting;
import landfall.tap.FluteForm;
import landfall.tap.FluteKind;
import landfall.tap.Flutes;
import landfall.tap.Land;
import landfall.tap.Tap;
import landfall.thread.CallOut;
import landfall.torsion.Section;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The section of a tap")
class FlutedSectionTest {
    /** The grid's sections are a tap's one-arc section when core and flute are shares of the pitch diameter. */
    @ParameterizedTest(name = "{0} flutes, core {1}, radius {2}")
    @CsvFileSource(resources = "/reference/torsion/tap-like.csv", delimiter = ';')
    void flutesOfOneArcAreTheSectionsOfTheGrid(int flutes, double core, double rho, double J, double peak) {
        Section section = section(Bench.oneArc("M10x1.5", flutes, core, rho, 4));
        assertThat(section.stiffness()).isCloseTo(J, withinPercentage(0.05));
        assertThat(section.stress()).isCloseTo(peak, withinPercentage(0.05));
    }

    /** A general-purpose finite-element library on the whole section, its input kept in the generators. */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/torsion/finite-elements.csv", delimiter = ';')
    void agreesWithFiniteElements(ArgumentsAccessor row) {
        FluteForm form = new FluteForm(
                Length.ofMm(row.getDouble(4)),
                Length.ofMm(row.getDouble(5)),
                row.get(6) == null ? null : Angle.ofDeg(row.getDouble(6)));
        Land land = row.get(7) == null ? new Land.LeftByFlute() : new Land.Span(Angle.ofDeg(row.getDouble(7)));
        Tap m8 = Bench.m8();
        CallOut callOut = Bench.callOut("M" + row.getString(1) + "x" + row.getString(2));
        Tap tap = new Tap(
                callOut,
                new Cutting(
                        new Flutes(row.getInteger(3), FluteKind.STRAIGHT, form, Angle.ZERO),
                        land,
                        new ChamferGiven(Angle.ofDeg(9), null, 4.0),
                        m8.cutting().relief()),
                m8.body(),
                m8.pitch(),
                m8.make());
        assertThat(section(tap).stiffness()).isCloseTo(row.getDouble(8), withinPercentage(0.1));
        assertThat(section(tap).stress()).isCloseTo(row.getDouble(9), withinPercentage(0.1));
    }

    @Test
    void theCardsTapIsWeakestAtItsFluteFloor() {
        Section section = section(Bench.m8());
        assertThat(section.strength()).isBetween(0.1, 0.3);
        assertThat(section.peak().radius().mm()).isBetween(1.74, 1.95);
    }

    /** Laws on random sections that close: more core and more land are stiffer and have more metal. */
    @Test
    void moreCoreAndMoreLandAreStiffer() {
        Random random = new Random(7);
        int closed = 0;
        for (int i = 0; i < 200; i++) {
            int flutes = 2 + random.nextInt(4);
            double core = 3 + 1.5 * random.nextDouble();
            double radius = 1.2 + 1.5 * random.nextDouble();
            double rake = -5 + 20 * random.nextDouble();
            double land = 20 + 100.0 / flutes * random.nextDouble();
            try {
                Section thin = section(tap(flutes, core, radius, rake, land));
                Section thick = section(tap(flutes, core * 1.05, radius, rake, land));
                Section wide = section(tap(flutes, core, radius, rake, land * 1.05));
                assertThat(thick.stiffness()).isGreaterThan(thin.stiffness());
                assertThat(wide.stiffness()).isGreaterThan(thin.stiffness());
                assertThat(thin.stiffness()).isBetween(0.0, 1.0);
                closed++;
            } catch (OutOfRange e) {
                assertThat(e.finding().field()).startsWith("flutes.");
            }
        }
        assertThat(closed).isGreaterThan(40);
    }

    @Test
    void whatDoesNotCloseIsRefusedNamingTheField() {
        assertThatThrownBy(() -> section(tap(4, 7.5, 2, 10, 40)))
                .hasMessage("flutes.core: \"7.500 mm (0.2953 in)\" must be under the basic pitch diameter, 7.188 mm"
                        + " (0.2830 in). To mend: measure the core across the flute floors.");
        assertThatThrownBy(() -> section(tap(3, 3.5, 6, 10, 37)))
                .hasMessage(
                        "flutes.radius: \"6.000 mm (0.2362 in)\" must be such that an arc that touches the core meets"
                                + " the straight face below the crest. To mend: measure flute radius and core"
                                + " again, or leave the"
                                + " rake out for a flute of one arc.");
        assertThatThrownBy(() -> section(tap(4, 4, 2.2, 10, 75)))
                .hasMessage(
                        "flutes.radius: \"2.200 mm (0.0866 in)\" must be such that its arc touches the core and runs"
                                + " out to the heel that the land sets. To mend: measure flute radius, core and"
                                + " land again.");
    }

    @Test
    void aTapWithoutCoreIsRefused() {
        Tap m8 = Bench.m8();
        Tap bare = new Tap(
                m8.callOut(),
                new Cutting(
                        Flutes.straight(3),
                        m8.cutting().land(),
                        m8.cutting().chamfer(),
                        m8.cutting().relief()),
                m8.body(),
                m8.pitch(),
                m8.make());
        assertThatThrownBy(() -> section(bare))
                .hasMessage("flutes.core: \"left out\" must be given, as the section's strength rests on it. To mend:"
                        + " measure the core across the flute floors.");
    }

    private static Tap tap(int flutes, double core, double radius, double rake, double land) {
        FluteForm form = new FluteForm(Length.ofMm(core), Length.ofMm(radius), Angle.ofDeg(rake));
        Tap m8 = Bench.m8();
        return new Tap(
                m8.callOut(),
                new Cutting(
                        new Flutes(flutes, FluteKind.STRAIGHT, form, Angle.ZERO),
                        new Land.Span(Angle.ofDeg(land)),
                        m8.cutting().chamfer(),
                        m8.cutting().relief()),
                m8.body(),
                m8.pitch(),
                m8.make());
    }

    private static Section section(Tap tap) {
        return Section.of(FlutedSection.outline(tap), tap.thread().pitchDiameter());
    }
}
