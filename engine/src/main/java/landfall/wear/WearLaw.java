// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import java.util.List;
import java.util.Set;
import landfall.fault.Caution;
import landfall.fault.OutOfRange;
import landfall.history.Standing;
import landfall.history.Uses;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.working.Pen;
import landfall.working.Worked;

/**
 * How taps of one thread, one kind and one material wear in this shop: docs/methods/wear-law.md.
 *
 * <p>Give it every run of such taps, open ones too. A tap's own run is set aside when its own future is asked for, and
 * then weighed as that tap's.
 */
public final class WearLaw {
    /** Ends of a band that holds eight in ten. */
    private static final double LOW = 0.1;

    private static final double HIGH = 0.9;

    private final Prior prior;
    private final List<Brief> runs;
    private final Set<Brief> own;
    private final Work work;
    private final List<Evidence> evidence;
    private final Posterior posterior;
    private final List<Column> columns;
    private final Records records;
    private final double exposed;
    private final Breakage breakage;
    private final double shortLife;

    private WearLaw(List<Brief> runs, Prior prior) {
        this.prior = prior;
        this.runs = List.copyOf(runs);
        this.own = Set.copyOf(runs);
        this.work = Work.of(runs, prior);
        this.evidence = runs.stream().map(run -> Evidence.of(run, prior, work)).toList();
        this.posterior = Posterior.of(prior.life(), evidence);
        this.columns = posterior.columns();
        this.records = Records.of(runs, evidence);
        this.exposed = exposed();
        this.breakage = Breakage.of(prior.breaks(), records.broken(), exposed);
        this.shortLife = LifeCurve.of(columns, Evidence.NONE).life(LOW);
    }

    /** The law after these runs, all of the prior's thread and mostly of its material. */
    public static WearLaw of(List<Run> runs, Prior prior) {
        return ofBriefs(runs.stream().map(Brief::of).toList(), prior);
    }

    /** The same, from runs in brief. */
    public static WearLaw ofBriefs(List<Brief> runs, Prior prior) {
        for (Brief run : runs) {
            String material = run.material();
            if (!material.isEmpty()
                    && !material.equals(prior.subject().material().id())) {
                throw new OutOfRange(
                        "material of " + run.mark(),
                        material,
                        prior.subject().material().id() + ", as the law's is",
                        "part the runs by material first");
            }
        }
        return new WearLaw(runs, prior);
    }

    /** Runs to due that the records add up to, by danger; each run worn as far as its own signs and the law say. */
    private double exposed() {
        double middle = posterior.middle().mean();
        double scatter = Math.exp(posterior.lnScatter().mean());
        double sum = 0;
        for (int i = 0; i < runs.size(); i++) {
            Evidence one = evidence.get(i);
            if (!one.isNone()) {
                double worked = work.diameters(runs.get(i).course().whole());
                double own = 1 / (one.noise() * one.noise());
                double others = 1 / (scatter * scatter);
                double ln = one.known()
                        ? (own * one.lnLife() + others * middle) / (own + others)
                        : Math.max(middle, one.lnLife());
                sum += Hazard.at(worked / Math.exp(ln));
            }
        }
        return sum;
    }

    public Prior prior() {
        return prior;
    }

    public Records records() {
        return records;
    }

    /** Depth of the holes that lives are told in. */
    public Length usualDepth() {
        return work.usual();
    }

    public List<Caution> cautions() {
        double off =
                posterior.middle().mean() - Math.log(prior.life().diameters().expected());
        return WearCautions.of(records, work.told(), off / prior.life().spread());
    }

    /** The law itself, for a tap that has just been sharpened. */
    public Worked<Learned> learned() {
        return Worked.of(this::learned);
    }

    private Learned learned(Pen pen) {
        basis(pen);
        Moments ln = posterior.middle();
        double t = 1.2815515655446004;
        Band middle = new Band(
                pen.write(WearRules.MIDDLE_LOW, holes(Math.exp(ln.mean() - t * ln.sd()))),
                pen.write(WearRules.MIDDLE, holes(Math.exp(ln.mean()))),
                pen.write(WearRules.MIDDLE_HIGH, holes(Math.exp(ln.mean() + t * ln.sd()))));
        Band life = life(LifeCurve.of(columns, Evidence.NONE), pen);
        return new Learned(life, middle, breaks(pen), work.usual(), records);
    }

    private void basis(Pen pen) {
        double d = pen.write(WearRules.MAJOR, prior.subject().major().mm());
        double L = pen.write(
                work.told() ? WearRules.DEPTH_TOLD : WearRules.DEPTH_USUAL,
                work.usual().mm());
        Prior.Life life = prior.life();
        double D = pen.write(
                life.told() ? WearRules.PRIOR_TOLD : WearRules.PRIOR_DIAMETERS,
                life.diameters().expected());
        pen.write(
                life.told() ? WearRules.FACTOR_TOLD : WearRules.PRIOR_FACTOR,
                Math.sqrt(life.diameters().high() / life.diameters().low()));
        double unused = pen.write(WearRules.PRIOR_HOLES, D * d / L);
        pen.write(WearRules.RUNS, records.runs());
        pen.write(WearRules.KNOWN, records.known());
    }

    private Band breaks(Pen pen) {
        pen.write(WearRules.BREAKS_WORTH, prior.breaks().worth());
        pen.write(WearRules.BREAKS_BEFORE, prior.breaks().perRun());
        pen.write(WearRules.BROKEN, records.broken());
        pen.write(WearRules.EXPOSED, exposed);
        Band band = breakage.band();
        return new Band(
                pen.write(WearRules.BREAKS_LOW, band.low()),
                pen.write(WearRules.BREAKS, band.expected()),
                pen.write(WearRules.BREAKS_HIGH, band.high()));
    }

    private Band life(LifeCurve curve, Pen pen) {
        return new Band(
                pen.write(WearRules.LIFE_LOW, holes(curve.life(LOW))),
                pen.write(WearRules.LIFE, holes(curve.life(0.5))),
                pen.write(WearRules.LIFE_HIGH, holes(curve.life(HIGH))));
    }

    private double holes(double diameters) {
        return diameters / work.perHole();
    }

    /**
     * Holes of a run, a guess among them taken high, over the life that nine in ten taps pass; without end where wear
     * was seen on the run, for then the count alone tells little.
     */
    public double usedShare(Brief run) {
        double worked = work.diameters(run.course().whole());
        double high = run.about() ? worked * WearRules.GUESS : worked;
        return run.course().signs().isNone() ? high / shortLife : Double.POSITIVE_INFINITY;
    }

    /** When the tap of this run is next due; its wear land, torque and feel count where they were told. */
    public Worked<Due> dueIn(Run run) {
        return dueIn(Brief.of(run));
    }

    /** The same, from the run in brief. */
    public Worked<Due> dueIn(Brief run) {
        Own own = own(run);
        return Worked.of(pen -> due(own, pen));
    }

    /**
     * When a tap is next due by its count alone, each hole taken as of the usual depth and material. Where its runs are
     * among the law's, ask with the run instead: here its own holes count for the law as well.
     */
    public Worked<Due> dueIn(Standing standing) {
        Uses uses = standing.uses();
        double worked = uses.sinceSharp() * work.perHole();
        Evidence one = worked == 0
                ? Evidence.NONE
                : new Evidence(Math.log(worked), Evidence.JUDGED + (uses.about() ? Evidence.ABOUT : 0), false);
        Own own = new Own(worked, uses.about(), LifeCurve.of(columns, one));
        return Worked.of(pen -> due(own, pen));
    }

    private Due due(Own own, Pen pen) {
        basis(pen);
        Band life = life(own.curve, pen);
        double used = pen.write(WearRules.USED, holes(own.worked));
        return own.about ? about(used, life, pen) : counted(used, life, pen);
    }

    /** How its wear land has grown and will, with what was measured of it. */
    public Worked<WearCurve> curve(Run run) {
        Own own = own(Brief.of(run));
        List<WearCurve.Seen> seen = run.lands().stream()
                .filter(land -> land.after() > 0)
                .map(land -> new WearCurve.Seen(holes(work.diameters(run.until(land.after()))), land.width()))
                .toList();
        return Worked.of(pen -> WearCurve.of(due(own, pen), prior.subject().due(), seen, pen));
    }

    private Due counted(double used, Band life, Pen pen) {
        Band left = new Band(
                pen.write(WearRules.LEFT_LOW, life.low() - used),
                pen.write(WearRules.LEFT, life.expected() - used),
                pen.write(WearRules.LEFT_HIGH, life.high() - used));
        return new Due(new Band(used, used, used), life, left, work.usual());
    }

    private Due about(double used, Band life, Pen pen) {
        double low = pen.write(WearRules.USED_LOW, used / WearRules.GUESS);
        double high = pen.write(WearRules.USED_HIGH, used * WearRules.GUESS);
        Band left = new Band(
                pen.write(WearRules.LEFT_LOW_ABOUT, life.low() - high),
                pen.write(WearRules.LEFT, life.expected() - used),
                pen.write(WearRules.LEFT_HIGH_ABOUT, life.high() - low));
        return new Due(new Band(low, used, high), life, left, work.usual());
    }

    /** Whether a fresh tap comes through a job. */
    public Worked<Survival> survival(Job job) {
        Own own = new Own(0, false, LifeCurve.of(columns, Evidence.NONE));
        return Worked.of(pen -> survival(own, job, pen));
    }

    /** Whether the tap of this run comes through a job. */
    public Worked<Survival> survival(Run run, Job job) {
        return survival(Brief.of(run), job);
    }

    /** The same, from the run in brief. */
    public Worked<Survival> survival(Brief run, Job job) {
        Own own = own(run);
        return Worked.of(pen -> survival(own, job, pen));
    }

    private Survival survival(Own own, Job job, Pen pen) {
        basis(pen);
        Band unused = breaks(pen);
        double before = own.worked;
        pen.write(WearRules.USED, holes(before));
        double after = before + job.holes() * work.perHole(job.depth());
        pen.write(WearRules.JOB, holes(after - before));
        double whole = own.curve.mean(life -> breakage.survival(Hazard.at(after / life) - Hazard.at(before / life)));
        double lasts = own.curve.mean(
                life -> life <= after ? 0 : breakage.survival(Hazard.at(after / life) - Hazard.at(before / life)));
        return new Survival(
                pen.write(WearRules.MAY_BREAK, 1 - whole),
                pen.write(WearRules.MAY_BE_DUE, 1 - own.curve.beyond(after)),
                pen.write(WearRules.MAY_LAST, lasts));
    }

    /** A tap's own work and life. */
    private record Own(double worked, boolean about, LifeCurve curve) {}

    private Own own(Brief run) {
        Evidence one = Evidence.of(run, prior, work);
        List<Column> others = one.isNone() || !own.contains(run) ? columns : posterior.columnsWithout(one);
        return new Own(work.diameters(run.course().whole()), run.about(), LifeCurve.of(others, one));
    }
}
