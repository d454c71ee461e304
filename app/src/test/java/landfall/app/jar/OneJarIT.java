// SPDX-License-Identifier: Apache-2.0
package landfall.app.jar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.app.example.Examples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The jar as it is shipped, as processes: what works from classes can be missing from the jar. */
class OneJarIT {
    private static final Path JAR = Path.of("target/landfall.jar").toAbsolutePath();
    private static final Path EXAMPLES = Path.of("../examples").toAbsolutePath();

    @TempDir
    private Path folder;

    private record Ended(int code, byte[] out, String err) {
        String text() {
            return new String(out, StandardCharsets.UTF_8);
        }
    }

    private ProcessBuilder process(String... words) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin/java").toString(),
                "-XX:+UseSerialGC",
                "-jar",
                JAR.toString()));
        command.addAll(List.of(words));
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        builder.environment()
                .putAll(Map.of("LANDFALL_HOME", folder.resolve("home").toString(), "LC_ALL", "C"));
        return builder;
    }

    private Ended run(String input, String... words) throws IOException, InterruptedException {
        Path err = folder.resolve("err.txt");
        Process process = process(words).redirectError(err.toFile()).start();
        try (var in = process.getOutputStream()) {
            in.write(input.getBytes(StandardCharsets.UTF_8));
        }
        byte[] out = process.getInputStream().readAllBytes();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return new Ended(process.exitValue(), out, Files.readString(err));
    }

    @Test
    void exitCodesTellWhatHappened() throws Exception {
        assertThat(run("", "thread", "M8x1.25-6H", "--json").code()).isZero();
        Ended refused = run("", "thread", "M8x1.25-6Q");
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err()).contains("To mend").doesNotContain("Exception");
        assertThat(run("", "grind", "nowhere.json").code()).isEqualTo(2);
    }

    @Test
    void outputIsUtf8WhateverTheLocale() throws Exception {
        assertThat(run("", "thread", "M8x1.25-6H").text()).contains("M8×1.25-6H");
        assertThat(run("M8x1.25-6Ä\n", "thread", "-").text()).contains("6Ä");
    }

    @Test
    void aBatchAnswersWhileItsInputIsStillOpen() throws Exception {
        Process process = process("thread", "-")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (var in = process.outputWriter(StandardCharsets.UTF_8);
                var out = process.inputReader(StandardCharsets.UTF_8)) {
            in.write("M8x1.25-6H\n");
            in.flush();
            assertThat(out.readLine()).contains("M8x1.25-6H");
            in.write("1/4-20 UNC-2B\n");
            in.flush();
            assertThat(out.readLine()).contains("1/4-20 UNC-2B");
        }
        assertThat(process.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isZero();
    }

    @Test
    void theSheetIsAPdfAndNothingElseGoesToStandardOutput() throws Exception {
        Ended ended = run(
                "",
                "grind",
                EXAMPLES.resolve("tap-m8.json").toString(),
                "--fixture",
                EXAMPLES.resolve("fixture-three-lobes.json").toString(),
                "--sheet",
                "setup.pdf",
                "--json");
        assertThat(ended.code()).isZero();
        assertThat(ended.text()).startsWith("{").endsWith("}\n");
        assertThat(ended.err()).isEqualTo("The sheet is in setup.pdf\n");
        assertThat(Files.readAllBytes(folder.resolve("setup.pdf")))
                .startsWith("%PDF-".getBytes(StandardCharsets.US_ASCII));
    }

    @Test
    void theDemoGoesFromCardToSheetOutsideTheProgramsFolder() throws Exception {
        Ended ended = run("", "demo");
        assertThat(ended.err()).isEmpty();
        assertThat(ended.code()).isZero();
        assertThat(ended.text()).contains("What to look at").contains("Next:");
        assertThat(ended.text().lines())
                .filteredOn(line -> line.length() > 80 && !line.contains(folder.toString()))
                .isEmpty();
        for (String file : List.of("tap.json", "fixture.json", "setup.txt", "setup.pdf")) {
            assertThat(folder.resolve("home/demo").resolve(file)).isNotEmptyFile();
        }
    }

    @Test
    void theServerShowsItsPagesFromTheJar() throws Exception {
        Process process = process("serve", "--port", "0")
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            Matcher address = Pattern.compile("http://127\\.0\\.0\\.1:\\d+").matcher(out.readLine());
            assertThat(address.find()).isTrue();
            String example = Examples.all().get(0).address();
            String pdf = example.replaceFirst("/grind", "/grind.pdf");
            for (String path :
                    List.of("/", "/thread?thread=M8x1.25-6H", example, "/methods", "/methods/sources", pdf)) {
                HttpResponse<String> reply = HttpClient.newHttpClient()
                        .send(
                                HttpRequest.newBuilder(URI.create(address.group() + path))
                                        .build(),
                                HttpResponse.BodyHandlers.ofString());
                assertThat(reply.statusCode()).as(path).isEqualTo(200);
            }
        } finally {
            process.destroy();
            assertThat(process.waitFor(20, TimeUnit.SECONDS)).isTrue();
        }
    }
}
