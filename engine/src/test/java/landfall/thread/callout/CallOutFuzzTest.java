// SPDX-License-Identifier: Apache-2.0
package landfall.thread.callout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import landfall.fault.Answer;
import landfall.thread.CallOut;
import landfall.thread.LimitsOfSize;
import landfall.thread.metric.MetricSize;
import landfall.thread.pipe.PipeReader;
import landfall.thread.power.AcmeReader;
import landfall.thread.power.TrapezoidalReader;
import landfall.thread.unified.UnifiedPairs;
import landfall.thread.whitworth.WhitworthReader;
import landfall.working.Pen;
import org.junit.jupiter.api.Test;

/**
 * Random and damaged texts: each is read or refused with a mend, and what is read has limits and reads back the same.
 */
class CallOutFuzzTest {
    private static final String LETTERS =
            "0123456789012345./-- xXMmUNCFESRPhLHABefgGH6#\"(),;½×–\u0000\u00a0\uD800TrSTIJBWG%~\n";
    private static final List<String> ENDS = List.of(
            "",
            "-2A",
            "-3B",
            "-1A/1B",
            "-6H",
            "-6g",
            "-5H6H",
            "-6H/6g",
            "-LH",
            "-S",
            "-12",
            " LE 0.5",
            " (22)",
            " A",
            "-7e",
            "-2G",
            "-close",
            " THRU",
            " STI",
            " L.H.",
            "-2",
            " x 20 DEEP",
            " (4) PLCS");

    private static List<String> seeds() {
        List<String> seeds = new ArrayList<>(UnifiedPairs.callOuts());
        MetricSize.standard().forEach(size -> seeds.add(size.label()));
        seeds.add("0.2500-0.05P-0.1L UNS-2A");
        seeds.add("M16xPh3P1.5-6H-L-LH");
        seeds.addAll(PipeReader.callOuts());
        seeds.addAll(WhitworthReader.callOuts());
        seeds.addAll(AcmeReader.callOuts());
        seeds.addAll(TrapezoidalReader.callOuts());
        seeds.add("Tr40x14(P7)-7e-LH");
        seeds.add("1.0000-0.2P-0.4L ACME-3G");
        seeds.add("STI 1/4-20 UNC-2B");
        seeds.add("MJ6x1-4H5H");
        return seeds;
    }

    private static String damaged(String text, Random random) {
        StringBuilder damaged = new StringBuilder(text);
        for (int i = random.nextInt(4); i >= 0; i--) {
            int at = random.nextInt(damaged.length() + 1);
            switch (random.nextInt(3)) {
                case 0 -> damaged.insert(at, letter(random));
                case 1 -> damaged.replace(Math.max(0, at - 1), at, "");
                default -> damaged.replace(Math.max(0, at - 1), at, String.valueOf(letter(random)));
            }
        }
        return damaged.toString();
    }

    private static char letter(Random random) {
        return LETTERS.charAt(random.nextInt(LETTERS.length()));
    }

    private static void judge(String text) {
        Answer<CallOut> answer = CallOuts.read(text);
        if (answer instanceof Answer.Of<CallOut> read) {
            CallOut callOut = read.value();
            assertThat(CallOuts.read(callOut.normal()))
                    .as("%s printed as %s", text, callOut.normal())
                    .isEqualTo(answer);
            LimitsOfSize limits = LimitsOfSize.of(callOut, Pen.NONE);
            assertThat(limits.internal().isPresent()
                            || limits.external().isPresent()
                            || limits.taper().isPresent())
                    .as(text)
                    .isTrue();
            callOut.cautions();
        } else {
            assertThat(answer.findings()).as(text).isNotEmpty().allSatisfy(finding -> {
                assertThat(finding.why()).isNotBlank();
                assertThat(finding.mend()).isNotBlank();
            });
        }
    }

    @Test
    void damagedCallOutsAreReadOrRefusedWithAMend() {
        Random random = new Random(20261125);
        List<String> seeds = seeds();
        for (int i = 0; i < 20_000; i++) {
            String seed = (random.nextInt(8) == 0 ? "4X " : "")
                    + seeds.get(random.nextInt(seeds.size()))
                    + ENDS.get(random.nextInt(ENDS.size()));
            judge(damaged(seed, random));
        }
    }

    @Test
    void randomTextsAreReadOrRefusedWithAMend() {
        Random random = new Random(7);
        for (int i = 0; i < 5_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(30); n > 0; n--) {
                text.append(letter(random));
            }
            judge(text.toString());
        }
    }

    @Test
    void everyStandardCallOutReadsBackAsItself() {
        for (String seed : seeds()) {
            assertThat(CallOuts.read(seed).orThrow().normal()).isEqualTo(seed);
        }
    }

    @Test
    void aVeryLongTextIsRefusedAtOnce() {
        judge("9".repeat(1_000_000));
        judge("M8-".repeat(60));
    }
}
