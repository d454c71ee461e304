// SPDX-License-Identifier: Apache-2.0
package landfall.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import landfall.quantity.Length;
import landfall.tap.Tap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The tap as a body")
class TapBodyTest {
    /** {@code -Dlandfall.solids=1000} for the long run. */
    private static final int TAPS = Integer.getInteger("landfall.solids", 40);

    private static final Length ERROR = Length.ofMm(0.03);

    @Test
    void everyBodyIsWatertightAndTurnedOutwards() throws IOException {
        RandomTaps taps = new RandomTaps(71);
        long triangles = 0;
        for (int i = 0; i < TAPS; i++) {
            Tap tap = taps.next();
            Mesh mesh = TapBody.of(tap, ERROR).orThrow().mesh();
            assertThat(mesh.openEdges()).as("open edges of tap %d", i).isZero();
            assertThat(mesh.volume().mm3()).as("volume of tap %d", i).isPositive();
            assertThat(mesh.mirrored().volume().mm3()).isCloseTo(mesh.volume().mm3(), within(1e-6));
            assertThat(mesh.mirrored().openEdges()).isZero();
            triangles += mesh.triangles();
        }
        Files.writeString(
                Files.createDirectories(Path.of("target")).resolve("solids.txt"),
                "%d bodies watertight, %d triangles, no open edge\n".formatted(TAPS, triangles));
    }

    /** The sum over a fine polar grid of what lies inside lands and outside flutes, place by place. */
    @Test
    void sectionsAgreeWithASumOverPlaces() {
        RandomTaps taps = new RandomTaps(72);
        Random random = new Random(73);
        for (int i = 0; i < 8; i++) {
            Tap tap = taps.next();
            Mesh mesh = TapBody.of(tap, ERROR).orThrow().mesh();
            InsideOfTap inside = new InsideOfTap(tap);
            double z = tap.body().threadLength().mm() * random.nextDouble();
            double area = inside.section(z);
            // the mesh may part from the surface by its error all along the outline
            double allowed = 0.2 * ERROR.mm() * Math.PI * tap.thread().major().mm() + 0.001 * area;
            assertThat(mesh.section(Length.ofMm(z)).mm2())
                    .as("section of tap %d at %.3f mm", i, z)
                    .isCloseTo(area, within(allowed));
        }
    }

    /** Places strewn over the triangles of the thread lie on the surface within the error told. */
    @Test
    void noPlaceOfTheMeshIsFartherFromTheSurfaceThanItsErrorSays() {
        RandomTaps taps = new RandomTaps(74);
        for (int i = 0; i < 12; i++) {
            Tap tap = taps.next();
            InsideOfTap inside = new InsideOfTap(tap);
            Mesh mesh = TapBody.of(tap, ERROR).orThrow().mesh();
            assertThat(inside.farthest(mesh, 3000, new Random(i)))
                    .as("farthest place of tap %d, mm", i)
                    .isLessThan(ERROR.mm());
        }
    }

    @Test
    void halfTheErrorTakesMorePlacesAndTheVolumeConverges() {
        Tap tap = new RandomTaps(75).next();
        double coarse =
                TapBody.of(tap, Length.ofMm(0.12)).orThrow().mesh().volume().mm3();
        double fine =
                TapBody.of(tap, Length.ofMm(0.03)).orThrow().mesh().volume().mm3();
        double finer =
                TapBody.of(tap, Length.ofMm(0.0075)).orThrow().mesh().volume().mm3();
        assertThat(Math.abs(fine - finer)).isLessThan(Math.abs(coarse - finer) / 2);
        assertThat(fine).isCloseTo(finer, within(0.002 * finer));
    }
}
