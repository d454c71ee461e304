// SPDX-License-Identifier: Apache-2.0
package landfall.identity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import landfall.fault.Caution;
import landfall.quantity.Length;
import landfall.tap.blank.TapBlank;
import landfall.thread.CallOut;
import landfall.thread.Family;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/**
 * What a tap may be, best first.
 *
 * @param other share of everything that is not shown, non-standard threads among it
 * @param tellApart the look that tells the first two apart; null when there are not two
 */
public record Identification(
        List<Candidate> candidates, double other, @Nullable TellApart tellApart, List<Caution> cautions) {
    private static final Source ESTIMATE = Source.of("derived", "docs/methods/what-is-this-tap.md");
    public static final Rule SCORE =
            Rule.table("p", "1", ESTIMATE, Trust.ESTIMATE, "likelihood times how common, normed to 1");
    public static final Rule OTHER =
            Rule.table("p_other", "1", ESTIMATE, Trust.ESTIMATE, "share of all that is not shown");
    static final Rule MEASURED = Rule.given("d_seen", "mm", "diameter over the crests, measured");
    static final Rule BASIC = Rule.table(
            "d", "mm", Source.of("derived", "basic sizes of the thread"), Trust.DERIVED, "basic major diameter");
    public static final Rule OVER =
            new Rule("x", "d_seen - d", "mm", ESTIMATE, Trust.DERIVED, "crest over the basic major diameter");

    private static final int SHOWN = 8;
    private static final double LEAST_SCORE = 0.002;
    /** Weight and width of what is in no series: as if one tap in a hundred were special, of any size within 2 mm. */
    private static final double OTHER_WEIGHT = 0.01;

    private static final double UNDER_SHARE = -0.03;

    public Identification {
        candidates = List.copyOf(candidates);
        cautions = List.copyOf(cautions);
    }

    public static Worked<Identification> of(Sighting sighting) {
        return Worked.of(pen -> compute(sighting, pen));
    }

    private record Weighed(CallOut callOut, double weight) {}

    private static Identification compute(Sighting sighting, Pen pen) {
        Likelihood likelihood = new Likelihood(sighting);
        int starts = Starts.of(sighting, pen);
        List<Weighed> weighed = new ArrayList<>();
        double other = OTHER_WEIGHT / (2 * 0.01 * sighting.pitch().mm());
        double sum = other;
        for (CallOut callOut : Catalogue.all()) {
            double likely = likelihood.of(callOut.thread());
            double weight = likely == 0 ? 0 : likely * Commonness.of(callOut);
            if (weight > 0) {
                weighed.add(new Weighed(callOut, weight));
                sum += weight;
            }
        }
        weighed.sort(Comparator.comparingDouble(Weighed::weight).reversed());
        List<Candidate> shown = new ArrayList<>();
        double left = 1;
        for (Weighed each : weighed) {
            double score = each.weight / sum;
            if (shown.size() < SHOWN && score >= LEAST_SCORE) {
                Candidate candidate = candidate(Starts.of(each.callOut, starts), score, sighting, likelihood, pen);
                shown.add(candidate.wound(starts, sighting.seen().helix().hand()));
                left -= score;
            }
        }
        TellApart apart = shown.size() < 2 ? null : TellApart.of(shown.get(0), shown.get(1));
        return new Identification(shown, pen.write(OTHER, Math.max(0, left)), apart, cautions(shown, sighting));
    }

    private static Candidate candidate(
            CallOut callOut, double score, Sighting sighting, Likelihood likelihood, Pen pen) {
        double seen = pen.write(MEASURED, sighting.major().mm());
        double d = pen.write(BASIC, callOut.thread().major().mm());
        double over = pen.write(OVER, seen - d);
        return new Candidate(
                callOut,
                callOut.normal(),
                pen.write(SCORE, score),
                Length.ofMm(over),
                why(callOut.thread(), over, sighting, likelihood.blank(callOut.thread())));
    }

    private static String why(ScrewThread thread, double over, Sighting sighting, @Nullable TapBlank blank) {
        String crest = crest(over / thread.pitch().mm(), sighting.seen().rings());
        StringBuilder why = new StringBuilder(
                String.format(Locale.ROOT, "crest %+.3f mm (%+.4f in), %s", over, over / Length.MM_PER_INCH, crest));
        double off = sighting.pitch().over(thread.pitch()) - 1;
        why.append(String.format(Locale.ROOT, "; pitch %+.2f %%", off * 100));
        if (blank != null) {
            why.append("; shank as ").append(blank.list()).append(blank.read() ? "" : " (remembered)");
        }
        return why.toString();
    }

    private static String crest(double share, @Nullable Integer rings) {
        if (rings != null && (rings == 1 || rings == 2)) {
            return rings == 1
                    ? "as on the first tap of a hand set, undersize by design"
                    : "as on the second tap of a hand set, undersize by design";
        }
        if (share > 0.03) {
            return "over nominal, as on a fresh tap";
        }
        if (share > UNDER_SHARE) {
            return "at nominal, as on a worn tap";
        }
        return rings == null ? "under nominal: worn, or the first of a hand set" : "under nominal: worn";
    }

    private static List<Caution> cautions(List<Candidate> shown, Sighting sighting) {
        List<Caution> cautions = new ArrayList<>();
        if (shown.isEmpty()) {
            cautions.add(new Caution(
                    "noStandardThread",
                    "No standard thread has this diameter and pitch: measure again, or it is a special."));
            return cautions;
        }
        Candidate best = shown.get(0);
        boolean under = best.overNominal().mm()
                < UNDER_SHARE * best.callOut().thread().pitch().mm();
        if (under && sighting.seen().rings() == null) {
            cautions.add(new Caution(
                    "ringsNotTold",
                    "The crest is under nominal. The first and second taps of a hand set are so by design: look for"
                            + " rings round the shank before calling it worn.",
                    "x"));
        }
        if (shown.stream().anyMatch(each -> isInsert(each.callOut()))) {
            cautions.add(new Caution(
                    "insertTap",
                    "A tap for wire inserts has the pitch of the screw but a larger diameter: look for STI or EG."));
        }
        return cautions;
    }

    private static boolean isInsert(CallOut callOut) {
        Family family = callOut.thread().family();
        return family == Family.STI_INCH || family == Family.STI_METRIC;
    }
}
