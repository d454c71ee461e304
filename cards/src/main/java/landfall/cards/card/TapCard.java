// SPDX-License-Identifier: Apache-2.0
package landfall.cards.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.fault.Answer;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.tap.Body;
import landfall.tap.Chamfer;
import landfall.tap.ChamferGiven;
import landfall.tap.Cutting;
import landfall.tap.FluteForm;
import landfall.tap.FluteKind;
import landfall.tap.Flutes;
import landfall.tap.Land;
import landfall.tap.Least;
import landfall.tap.LimitMark;
import landfall.tap.Make;
import landfall.tap.PitchZone;
import landfall.tap.Tap;
import landfall.tap.TapMaterial;
import landfall.tap.ThreadRelief;
import landfall.thread.CallOut;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.thread.callout.CallOuts;
import landfall.working.Pen;
import org.jspecify.annotations.Nullable;

/**
 * The tap as typed. Left out: flutes are straight, the thread relief is concentric, the material is HSS; the land is
 * what flutes of one arc leave. A figure that can't be told from others stays unknown.
 */
public final class TapCard {
    public static final Form FORM = TapFields.FORM;

    /** How far two lands of three ways to measure one may part. */
    private static final double AGREEMENT = 0.01;

    private TapCard() {}

    /** The fields of a card file. */
    public static Answer<Map<String, String>> read(String json) {
        return Flat.read(json, FORM);
    }

    /** The card as JSON, from the same fields. */
    public static String write(Map<String, String> typed) {
        return CardJson.write(FORM, typed);
    }

    /** The tap, judged; every part that cannot be is found at once. */
    public static Answer<Tap> tap(Entries entries) {
        Judging judging = new Judging();
        ScrewThread thread = entries.need(TapFields.THREAD).thread();
        Flutes flutes = judging.part(() -> flutes(entries));
        ChamferGiven chamfer = chamfer(entries);
        judging.part(() -> chamfer.resolve(thread, Pen.NONE));
        Land land = flutes == null ? new Land.LeftByFlute() : land(entries, flutes, thread.major(), judging);
        ThreadRelief relief = relief(entries, judging);
        Limits limit = limit(entries, entries.need(TapFields.THREAD), judging);
        return judging.whole(() -> new Tap(
                entries.need(TapFields.THREAD),
                new Cutting(Objects.requireNonNull(flutes), land, chamfer, relief),
                body(entries),
                new PitchZone(limit, least(entries)),
                make(entries)));
    }

    /**
     * What a card tells that is not whole enough for a tap; null is what it does not.
     *
     * @param flutes as typed: straight where it does not say
     * @param chamferThreads length of the chamfer in pitches
     */
    public record Partly(
            FluteKind flutes,
            @Nullable Double chamferThreads,
            @Nullable Limits pitch,
            Body body) {}

    /** The parts of a card that can be read by themselves; one that contradicts itself counts as not told. */
    public static Partly partly(Entries entries) {
        CallOut callOut = entries.need(TapFields.THREAD);
        Judging judging = new Judging();
        Chamfer chamfer = judging.part(() -> chamfer(entries).resolve(callOut.thread(), Pen.NONE));
        return new Partly(
                entries.get(TapFields.KIND).orElse(FluteKind.STRAIGHT),
                chamfer != null
                        ? Double.valueOf(chamfer.threads())
                        : entries.get(TapFields.THREADS).orElse(null),
                limit(entries, callOut, judging),
                body(entries));
    }

    private static <T> @Nullable T or(Entries entries, Field<T> field) {
        return entries.get(field).orElse(null);
    }

    private static Flutes flutes(Entries entries) {
        return new Flutes(
                entries.need(TapFields.COUNT),
                entries.get(TapFields.KIND).orElse(FluteKind.STRAIGHT),
                new FluteForm(or(entries, TapFields.CORE), or(entries, TapFields.RADIUS), or(entries, TapFields.RAKE)),
                entries.get(TapFields.HELIX).orElse(Angle.ZERO));
    }

    private static ChamferGiven chamfer(Entries entries) {
        return new ChamferGiven(
                or(entries, TapFields.CHAMFER_ANGLE), or(entries, TapFields.POINT), or(entries, TapFields.THREADS));
    }

    private static Land land(Entries entries, Flutes flutes, Length major, Judging judging) {
        List<Land> given = new ArrayList<>();
        entries.get(TapFields.LAND_WIDTH).ifPresent(width -> given.add(new Land.Arc(width)));
        entries.get(TapFields.LAND_CHORD).ifPresent(chord -> given.add(new Land.Chord(chord)));
        entries.get(TapFields.LAND_ANGLE).ifPresent(angle -> given.add(new Land.Span(angle)));
        if (given.isEmpty()) {
            if (entries.has(TapFields.RAKE)) {
                judging.found(
                        "land.width", "", "is needed when flutes.rake is given", "measure one land, edge to heel");
            } else {
                judging.part(() -> new Land.LeftByFlute().angle(major, flutes, Pen.NONE));
            }
            return new Land.LeftByFlute();
        }
        Angle first = judging.part(() -> given.get(0).angle(major, flutes, Pen.NONE));
        for (Land other : given.subList(1, given.size())) {
            Angle angle = judging.part(() -> other.angle(major, flutes, Pen.NONE));
            if (first != null && angle != null && Math.abs(angle.deg() / first.deg() - 1) > AGREEMENT) {
                judging.found(
                        "land",
                        "%.2f deg and %.2f deg".formatted(first.deg(), angle.deg()),
                        "is told in two ways that part by more than 1 %",
                        "give one of width, chord and angle");
            }
        }
        return given.get(0);
    }

    private static ThreadRelief relief(Entries entries, Judging judging) {
        ThreadRelief.Kind kind = entries.get(TapFields.RELIEF).orElse(ThreadRelief.Kind.CONCENTRIC);
        Angle slope = entries.get(TapFields.RELIEF_SLOPE).orElse(Angle.ZERO);
        Angle margin = entries.get(TapFields.RELIEF_MARGIN).orElse(Angle.ZERO);
        boolean sloped = slope.deg() > 0;
        if (sloped != (kind != ThreadRelief.Kind.CONCENTRIC)) {
            judging.found(
                    "threadRelief.slope",
                    entries.typed(TapFields.RELIEF_SLOPE),
                    sloped ? "must be 0 on a concentric thread" : "is needed on a relieved thread",
                    sloped
                            ? "give the kind eccentric or con-eccentric, or leave the slope out"
                            : "measure the fall of the crest");
        }
        if ((margin.deg() > 0) != (kind == ThreadRelief.Kind.CON_ECCENTRIC)) {
            judging.found(
                    "threadRelief.margin",
                    entries.typed(TapFields.RELIEF_MARGIN),
                    margin.deg() > 0 ? "belongs to a con-eccentric thread only" : "is needed on a con-eccentric thread",
                    "give the land angle behind the edge that is concentric, and the kind con-eccentric");
        }
        return new ThreadRelief(kind, slope, margin);
    }

    /** As measured, or as marked. */
    private static @Nullable Limits limit(Entries entries, CallOut callOut, Judging judging) {
        Length min = or(entries, TapFields.PITCH_MIN);
        Length max = or(entries, TapFields.PITCH_MAX);
        LimitMark mark = or(entries, TapFields.LIMIT);
        if (mark != null && (min != null || max != null)) {
            judging.found(
                    "limit",
                    entries.typed(TapFields.LIMIT),
                    "cannot stand beside measured limits",
                    "give the mark, or limit.pitchMin and limit.pitchMax");
            return null;
        }
        if (mark != null) {
            return judging.part(() -> mark.on(callOut.thread(), gradeFive(mark, callOut), Pen.NONE));
        }
        if (min != null && max != null && min.compareTo(max) > 0) {
            judging.found(
                    "limit.pitchMin", entries.typed(TapFields.PITCH_MIN), "is over limit.pitchMax", "swap the two");
            return null;
        }
        return min == null && max == null ? null : new Limits(min, max);
    }

    /** The nut's pitch tolerance of grade 5 on the same thread; null where the mark needs none or none is held. */
    private static @Nullable Length gradeFive(LimitMark mark, CallOut callOut) {
        if (!mark.needsGradeFive()) {
            return null;
        }
        String size = callOut.normal().replaceFirst("-.*", "");
        if (!(CallOuts.read(size + "-5H") instanceof Answer.Of<CallOut> nut)) {
            return null;
        }
        return nut.value()
                .limits(Side.INTERNAL, Pen.NONE)
                .map(SideLimits::pitch)
                .filter(pitch -> pitch.min() != null && pitch.max() != null)
                .map(pitch -> Objects.requireNonNull(pitch.max()).minus(Objects.requireNonNull(pitch.min())))
                .orElse(null);
    }

    private static Least least(Entries entries) {
        return new Least(
                or(entries, TapFields.LEAST_LENGTH),
                or(entries, TapFields.LEAST_LAND),
                or(entries, TapFields.LEAST_PITCH));
    }

    private static Body body(Entries entries) {
        return new Body(
                or(entries, TapFields.THREAD_LENGTH),
                or(entries, TapFields.OVERALL),
                or(entries, TapFields.SHANK),
                or(entries, TapFields.NECK),
                or(entries, TapFields.BACK_TAPER),
                or(entries, TapFields.CENTRES));
    }

    private static Make make(Entries entries) {
        return new Make(
                entries.get(TapFields.MATERIAL).orElse(TapMaterial.HSS),
                or(entries, TapFields.COATING),
                entries.get(TapFields.INTERRUPTED).orElse(false));
    }
}
