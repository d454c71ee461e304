// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import landfall.history.Status;
import landfall.thread.CallOut;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.working.Pen;
import org.jspecify.annotations.Nullable;

/**
 * The plug for a line.
 *
 * @param wanted the call-out with its class
 * @param go null where the shop has none that may be used
 * @param notGo null likewise
 * @param lack why an end is missing; empty when none is
 * @param cautions against those that are there
 */
public record GaugePick(
        String wanted, @Nullable GaugeOnHand go, @Nullable GaugeOnHand notGo, List<Lack> lack, List<String> cautions) {
    /**
     * What is missing.
     *
     * @param isPastDue whether a plug is there and its calibration has run out
     */
    public record Lack(boolean isPastDue, String says, String mend) {}

    public GaugePick {
        lack = List.copyOf(lack);
        cautions = List.copyOf(cautions);
    }

    static GaugePick of(CallOut callOut, List<GaugeOnHand> gauges, LocalDate today) {
        String className = callOut.limits(Side.INTERNAL, Pen.NONE)
                .map(SideLimits::className)
                .orElse("");
        String wanted = callOut.classes().isEmpty() ? callOut.normal() + " " + className : callOut.normal();
        List<GaugeOnHand> alike = gauges.stream()
                .filter(gauge -> gauge.callOut().thread().equals(callOut.thread()))
                .filter(gauge -> gauge.callOut()
                        .limits(Side.INTERNAL, Pen.NONE)
                        .map(SideLimits::className)
                        .filter(className::equals)
                        .isPresent())
                .toList();
        Search search = new Search(wanted.strip(), alike, today);
        return search.both();
    }

    /** Looks for both ends. */
    private record Search(String wanted, List<GaugeOnHand> alike, LocalDate today) {
        GaugePick both() {
            GaugeOnHand go = usable(GaugeOnHand.Ends.GO).orElse(null);
            GaugeOnHand notGo = usable(GaugeOnHand.Ends.NOT_GO).orElse(null);
            List<Lack> lack = new ArrayList<>();
            if (go == null && notGo == null && alike.stream().noneMatch(Search::isThere)) {
                lack.add(missing("GO and NOT GO plug"));
            } else {
                if (go == null) {
                    lack.add(lack(GaugeOnHand.Ends.GO));
                }
                if (notGo == null) {
                    Lack missing = lack(GaugeOnHand.Ends.NOT_GO);
                    if (!lack.contains(missing)) {
                        lack.add(missing);
                    }
                }
            }
            List<String> cautions = Stream.of(Optional.ofNullable(go), Optional.ofNullable(notGo))
                    .flatMap(Optional::stream)
                    .distinct()
                    .flatMap(gauge -> doubts(gauge).stream())
                    .toList();
            return new GaugePick(wanted, go, notGo, lack, cautions);
        }

        private Optional<GaugeOnHand> usable(GaugeOnHand.Ends end) {
            return alike.stream()
                    .filter(gauge -> gauge.ends().has(end) && isThere(gauge) && !isPastDue(gauge))
                    .max(Comparator.comparing(
                                    (GaugeOnHand gauge) -> gauge.calibration().due() != null)
                            .thenComparing(gauge -> gauge.ends() == GaugeOnHand.Ends.BOTH)
                            .thenComparing(GaugeOnHand::name, Comparator.reverseOrder()));
        }

        private Lack lack(GaugeOnHand.Ends end) {
            String which = end == GaugeOnHand.Ends.GO ? "GO" : "NOT GO";
            Optional<GaugeOnHand> pastDue = alike.stream()
                    .filter(gauge -> gauge.ends().has(end) && isThere(gauge))
                    .findFirst();
            if (pastDue.isPresent()) {
                GaugeOnHand gauge = pastDue.get();
                boolean failed = Boolean.FALSE.equals(gauge.calibration().passed());
                String why = failed
                        ? "did not pass its last calibration"
                        : "was due for calibration on " + gauge.calibration().due();
                return new Lack(true, gauge.name() + " " + why, "calibrate it, or gauge with another");
            }
            return missing(which + " plug");
        }

        private Lack missing(String what) {
            return new Lack(false, what + " " + wanted + " is not here", "borrow, buy or make one before you begin");
        }

        private static boolean isThere(GaugeOnHand gauge) {
            return !gauge.status().ended() && gauge.status() != Status.LENT;
        }

        private boolean isPastDue(GaugeOnHand gauge) {
            LocalDate due = gauge.calibration().due();
            return Boolean.FALSE.equals(gauge.calibration().passed()) || (due != null && due.isBefore(today));
        }

        private static List<String> doubts(GaugeOnHand gauge) {
            List<String> doubts = new ArrayList<>();
            if (gauge.calibration().due() == null) {
                doubts.add("No calibration of " + gauge.name() + " is on record.");
            }
            if (gauge.callOut().classes().isEmpty()) {
                doubts.add("The class of " + gauge.name() + " is not on its card: read it from the handle.");
            }
            if (gauge.status() == Status.ISSUED) {
                doubts.add(gauge.name() + " is issued: ask for it before you begin.");
            }
            return doubts;
        }
    }
}
