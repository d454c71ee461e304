// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import landfall.cut.WearFactor;
import landfall.history.Happening;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What one run says of its own life. A run that has cut x diameters and is worn to the share u of the wear limit would
 * last x/u, as wear grows with the thread cut.
 *
 * @param lnLife logarithm of x/u, diameters of thread to the wear limit
 * @param noise standard deviation of it, for that u and x are seen or guessed
 * @param known false where the life is at least this
 */
record Evidence(double lnLife, double noise, boolean known) {
    /** A tap that has cut nothing. */
    static final Evidence NONE = new Evidence(Double.NEGATIVE_INFINITY, 1, false);

    /** Standard deviation of a wear land read under a loupe, mm. */
    private static final double LOUPE_MM = 0.02;
    /** A narrower land is not told from one half as wide. */
    private static final double SURE_MM = 0.05;
    /** Lands differ from tooth to tooth. */
    private static final double LANDS = 0.1;
    /** Of the share at which a person calls a tap due: nine in ten between 0.6 and 1.6 of the limit. */
    static final double JUDGED = 0.3;
    /** Of the logarithm of a guessed count: nine in ten within times and over 1.5. */
    static final double ABOUT = 0.25;
    /** Shares at which a hand feels the torque to be heavier, and heavy, and how surely. */
    private static final double HEAVIER = 0.75;

    private static final double HEAVY = 1.25;
    private static final double FELT = 0.4;
    /** Standard deviation of a torque over that of the same tap's first holes. */
    private static final double TORQUE = 0.15;

    /** A rise by less is not told from none; of the share where it begins to be, the logarithm's doubt. */
    private static final double SEEN_IN_TORQUE = 1.25;

    private static final double UNSEEN = 0.6;
    private static final double FIRST_HOLES = 0.2;

    boolean isNone() {
        return this.equals(NONE);
    }

    static Evidence of(Brief run, Prior prior, Work work) {
        double all = work.diameters(run.course().whole());
        if (all == 0) {
            return NONE;
        }
        Evidence told = told(run, prior, work, all);
        double about = run.about() ? ABOUT : 0;
        boolean known = told.known && run.span().start() != Run.Start.UNKNOWN;
        return new Evidence(told.lnLife, Math.hypot(told.noise, about), known);
    }

    private static Evidence told(Brief run, Prior prior, Work work, double all) {
        Brief.Signs signs = run.course().signs();
        Brief.LandSign land = signs.land();
        if (land != null) {
            return ofLand(land.width(), prior, work.diameters(land.after()), all);
        }
        Evidence torque = signs.torque() == null ? null : ofTorque(signs.torque(), work);
        if (torque != null) {
            return torque;
        }
        Brief.FeelSign feel = signs.feel();
        return feel != null
                ? ofFeel(feel.feel(), work.diameters(feel.after()), all)
                : new Evidence(Math.log(all), JUDGED, run.span().end() == Run.End.SHARPENED);
    }

    /** A land too narrow to read surely says that the true one is narrower than that, more or less. */
    private static Evidence ofLand(Length width, Prior prior, double worked, double all) {
        double w = width.mm();
        double due = prior.subject().due().mm();
        if (w < SURE_MM) {
            return new Evidence(Math.log(Math.max(all, worked * due / SURE_MM)), LOUPE_MM / SURE_MM, false);
        }
        return new Evidence(Math.log(worked * due / w), Math.hypot(LOUPE_MM / w, LANDS), true);
    }

    private static Evidence ofFeel(Happening.Feel feel, double worked, double all) {
        return switch (feel) {
            case FRESH -> new Evidence(Math.log(Math.max(all, worked / HEAVIER)), FELT, false);
            case HEAVIER -> new Evidence(Math.log(worked / HEAVIER), FELT, true);
            case HEAVY -> new Evidence(Math.log(worked / HEAVY), FELT, true);
        };
    }

    /** Against the run's first holes, where both were measured in one material and at one depth. */
    private static @Nullable Evidence ofTorque(Brief.TorqueSign sign, Work work) {
        Brief.LastTorque last = sign.last();
        if (last == null) {
            return null;
        }
        double worked = work.diameters(last.after());
        if (work.diameters(sign.firstHoles()) > FIRST_HOLES * worked) {
            return null;
        }
        double factor = last.torque().nm() / sign.first().nm();
        if (factor < SEEN_IN_TORQUE) {
            return new Evidence(Math.log(worked / WearFactor.shareFor(SEEN_IN_TORQUE)), UNSEEN, false);
        }
        double share = WearFactor.shareFor(factor);
        double slope = WearFactor.at(share + 1e-6) - WearFactor.at(share);
        return new Evidence(Math.log(worked / share), Math.max(LANDS, TORQUE / (slope / 1e-6) / share), true);
    }
}
