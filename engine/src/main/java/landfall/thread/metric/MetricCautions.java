// SPDX-License-Identifier: Apache-2.0
package landfall.thread.metric;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Caution;
import landfall.thread.Side;
import landfall.thread.metric.Tolerances.Entry;
import landfall.thread.metric.Tolerances.Kind;

/** What a reader of metric limits must be told. */
final class MetricCautions {
    private MetricCautions() {}

    static List<Caution> of(MetricCallOut callOut) {
        List<Caution> cautions = new ArrayList<>();
        MetricSize size = callOut.size();
        if (!size.isStandard()) {
            cautions.add(new Caution(
                    "specialThread",
                    "Not a standard pair of diameter and pitch; the nearest are "
                            + String.join(
                                    ", ",
                                    MetricSize.nearest(size.diameter()).stream()
                                            .map(MetricSize::label)
                                            .toList())
                            + ". Taps and gauges are made to order.",
                    size.label()));
        }
        for (Side side : Side.values()) {
            callOut.zone(side).ifPresent(zone -> zone(size, zone, cautions));
        }
        if (callOut.form().isJ()) {
            cautions.add(new Caution(
                    "mixing",
                    "An ordinary M tap cuts an MJ hole; only the drilled hole is larger. An MJ screw may "
                            + "foul an M nut whose "
                            + "minor diameter is near its least.",
                    callOut.normal()));
        }
        startsAndEngagement(callOut, cautions);
        return List.copyOf(cautions);
    }

    private static void startsAndEngagement(MetricCallOut callOut, List<Caution> cautions) {
        MetricSize size = callOut.size();
        if (size.starts() > 1) {
            cautions.add(new Caution(
                    "multiStartTolerance",
                    "Several starts: the pitch diameter tolerance is widened by the factors remembered for "
                            + "trapezoidal "
                            + "threads; agree it on the drawing.",
                    size.starts() + " starts"));
        }
        if (callOut.engagement().length() > 0) {
            cautions.add(new Caution(
                    "engagementApproximate",
                    "This length of engagement falls in group "
                            + callOut.engagement().group()
                            + " by formula; the standard's table differs by up to 8 % at the borders.",
                    MetricSize.mm(callOut.engagement().length()) + " mm"));
        }
    }

    private static void zone(MetricSize size, Zone zone, List<Caution> cautions) {
        boolean inside = zone.side() == Side.INTERNAL;
        Entry pitch = Tolerances.tolerance(inside ? Kind.TD2 : Kind.Td2, size, zone.pitchGrade());
        Entry crest = Tolerances.tolerance(inside ? Kind.TD1 : Kind.Td, size, zone.crestGrade());
        boolean shifted = Character.toLowerCase(zone.pitchPosition()) != 'h';
        Entry deviation = shifted ? Tolerances.deviation(zone.pitchPosition(), size) : pitch;
        if (pitch.isBlank() || crest.isBlank() || deviation.isBlank()) {
            cautions.add(new Caution(
                    "notTabulated",
                    "The standard leaves " + zone.code()
                            + " blank for this diameter and pitch; these limits are by its formula and"
                            + " preferred numbers.",
                    size.label() + "-" + zone.code()));
        }
        if (pitch.remembered() || crest.remembered() || deviation.remembered()) {
            cautions.add(new Caution(
                    "remembered",
                    "Some tolerances of " + zone.code()
                            + " are remembered from the standard's tables, not read: within one step (6 %) of"
                            + " the formula.",
                    size.label() + "-" + zone.code()));
        }
    }
}
