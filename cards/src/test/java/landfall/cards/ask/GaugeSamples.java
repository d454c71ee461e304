// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.cards.answer.Document;

/** Verdicts and markings that between them show every item of theirs. */
final class GaugeSamples {
    private GaugeSamples() {}

    static List<Document> documents() {
        return List.of(
                gauge("1/4-20 UNC-2B", "marking", "H3", "over", ".2630", "wire", ".0289", "crest", ".2545"),
                gauge(
                        "M10x1.5",
                        "flutes",
                        "3",
                        "height",
                        "14.6 mm",
                        "bearing",
                        "wires",
                        "tap-min",
                        "9.07",
                        "tap-max",
                        "9.10",
                        "run-out",
                        "0.02 mm",
                        "uncertainty",
                        "0.003 mm"),
                gauge(
                        "M10x1.5-6H",
                        "pin",
                        "8.6",
                        "pitch-diameter",
                        "9.1",
                        "part",
                        "hole",
                        "go",
                        "yes",
                        "go-turns",
                        "9",
                        "not-go-turns",
                        "1",
                        "depth",
                        "12 mm"),
                gauge("1/2-13 UNC-2A", "part", "screw", "over", ".531", "crest", ".4975"),
                gauge("1/2-14 NPT", "standoff", ".05"),
                marking("3/8-16 NC LH HS G H3"),
                marking("M8 ISO2/6H HSS-E DIN 371"));
    }

    private static Document gauge(String thread, String... typed) {
        Map<String, String> map = new LinkedHashMap<>(Map.of("thread", thread));
        for (int i = 0; i < typed.length; i += 2) {
            map.put(typed[i], typed[i + 1]);
        }
        return new GaugeAsk().answer(map).orThrow();
    }

    private static Document marking(String text) {
        return new MarkingAsk().answer(Map.of("marking", text)).orThrow();
    }
}
