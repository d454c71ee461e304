// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import landfall.cards.ask.GrindAsk;
import landfall.grind.ChamferRelief;
import landfall.quantity.Length;
import landfall.solid.TapBody;
import landfall.tap.Tap;
import landfall.working.Pen;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * A general kernel for bodies (manifold-3d, from npm) builds the same tap from its figures, by twisting a section along
 * the axis and taking flutes away, and measures both.
 */
@DisplayName("Bodies against an independent kernel")
class KernelTest {
    private static final String KERNEL = "manifold-3d@3.5.4";
    private static final Path FOLDER = Path.of("target", "kernel").toAbsolutePath();
    private static final ObjectMapper JSON = new ObjectMapper();
    /** Pitches of thread that are measured. */
    private static final double MEASURED = 4;

    private static final Length ERROR = Length.ofMm(0.01);

    @BeforeAll
    static void fetchTheKernel() throws IOException, InterruptedException {
        if (Files.exists(FOLDER.resolve("package/manifold.wasm"))) {
            return;
        }
        Files.createDirectories(FOLDER);
        run("npm", "pack", KERNEL, "--silent");
        run("tar", "xzf", FOLDER.resolve("manifold-3d-3.5.4.tgz").toString());
    }

    @Test
    void aTapWithStraightFlutesHasTheVolumeAndTheSections() throws IOException, InterruptedException {
        agrees("M8x1.25-6H", "straight", "0 deg", 3);
        agrees("M12x1.75-6H", "straight", "0 deg", 4);
    }

    @Test
    void soHaveTapsWithSpiralFlutesOfEitherHandAndOneWithTwoStarts() throws IOException, InterruptedException {
        agrees("M10x1.5-6H", "spiral-right", "30 deg", 3);
        agrees("M10x1.5-6H", "spiral-left", "15 deg", 3);
        agrees("M12xPh3P1.5-6H", "straight", "0 deg", 4);
    }

    private static void agrees(String callOut, String kind, String helix, int flutes)
            throws IOException, InterruptedException {
        Tap tap = tap(callOut, kind, helix, flutes);
        TapBody body = TapBody.of(tap, ERROR).orThrow();
        Path glb = FOLDER.resolve("tap.glb");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        BodyFormat.GLB.write(body, out);
        Files.write(glb, out.toByteArray());
        Path figures = FOLDER.resolve("tap.json");
        Files.writeString(figures, JSON.writeValueAsString(figures(tap)));
        JsonNode found = JSON.readTree(run(
                "node",
                Path.of("src/test/kernel/kernel.mjs").toAbsolutePath().toString(),
                FOLDER.resolve("package").toString(),
                glb.toString(),
                figures.toString()));
        assertThat(found.at("/handed/status").asText()).isEqualTo("NoError");
        double whole = body.mesh().volume().mm3();
        assertThat(found.at("/whole").asDouble()).isCloseTo(whole, within(1e-5 * whole));
        // where all of the outline parted by a fifth of the error told, it would show
        double outline = 2 * Math.PI * tap.thread().major().mm();
        double height = figures(tap).get("to") instanceof Double to
                ? to - (double) figures(tap).get("from")
                : 0;
        assertThat(found.at("/handed/volume").asDouble())
                .as("volume of %s %s", callOut, kind)
                .isCloseTo(found.at("/built/volume").asDouble(), within(0.2 * ERROR.mm() * outline * height));
        for (int i = 0; i < found.at("/built/sections").size(); i++) {
            assertThat(found.at("/handed/sections/" + i).asDouble())
                    .as("section %d of %s %s", i, callOut, kind)
                    .isCloseTo(found.at("/built/sections/" + i).asDouble(), within(0.2 * ERROR.mm() * outline));
        }
    }

    private static Tap tap(String callOut, String kind, String helix, int flutes) {
        Map<String, String> typed = new HashMap<>(Bodies.typed());
        typed.keySet()
                .removeIf(path -> path.startsWith("land.")
                        || path.startsWith("least.")
                        || path.startsWith("limit.")
                        || path.startsWith("flutes.")
                        || path.startsWith("threadRelief.")
                        || path.startsWith("shank.")
                        || path.equals("backTaper")
                        || path.equals("overallLength"));
        boolean spiral = !helix.equals("0 deg");
        double major = Double.parseDouble(callOut.substring(1, callOut.indexOf('x')));
        typed.put("thread", callOut);
        typed.put("flutes.count", Integer.toString(flutes));
        typed.put("flutes.kind", kind);
        if (spiral) {
            typed.put("flutes.helix", helix);
        }
        typed.put("flutes.core", 0.45 * major + " mm");
        typed.put("flutes.radius", 0.24 * major + " mm");
        typed.put("chamfer.pointDiameter", 0.8 * major + " mm");
        typed.put("cam.lobes", Integer.toString(flutes));
        typed.put("cam.riseAngle", flutes == 3 ? "90 deg" : "65 deg");
        typed.put("cam.returnAngle", "20 deg");
        return new GrindAsk().setup(typed).orThrow().value().tap();
    }

    private static Map<String, Object> figures(Tap tap) {
        var thread = tap.thread();
        double pitch = thread.pitch().mm();
        double length = tap.body().threadLength().mm();
        // past what the relief of the chamfer takes off the heels
        double to = length - 0.3 * pitch;
        double from = to - MEASURED * pitch;
        Map<String, Object> figures = new HashMap<>();
        figures.put("major", thread.major().mm());
        figures.put("minor", thread.minorDiameter().mm());
        figures.put("pitch", pitch);
        figures.put("lead", thread.lead().perTurn().mm());
        figures.put("threadLength", length);
        figures.put("flutes", tap.flutes().count());
        figures.put("core", tap.flutes().form().core().mm());
        figures.put("fluteRadius", tap.flutes().form().radius().mm());
        if (tap.flutes().kind().isSpiral()) {
            figures.put(
                    "fluteLead",
                    ChamferRelief.fluteLead(thread, tap.flutes(), Pen.NONE).mm());
        }
        figures.put("from", from);
        figures.put("to", to);
        figures.put(
                "heights", List.of(from + 0.2 * pitch, from + 0.71 * pitch, from + 1.9 * pitch, from + 3.37 * pitch));
        return figures;
    }

    private static String run(String... words) throws IOException, InterruptedException {
        Path said = Files.createTempFile("kernel", ".txt");
        Process process = new ProcessBuilder(words)
                .directory(FOLDER.toFile())
                .redirectError(FOLDER.resolve("said.txt").toFile())
                .redirectOutput(said.toFile())
                .start();
        assertThat(process.waitFor(3, TimeUnit.MINUTES))
                .as("%s ended", words[0])
                .isTrue();
        assertThat(process.exitValue())
                .as("%s: %s", String.join(" ", words), Files.readString(FOLDER.resolve("said.txt")))
                .isZero();
        return Files.readString(said);
    }
}
