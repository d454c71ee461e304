// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import landfall.history.Event;
import landfall.history.Happening;
import landfall.history.History;
import landfall.material.WorkMaterial;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.tap.Body;
import landfall.tap.FluteKind;
import landfall.thread.CallOut;
import landfall.thread.callout.CallOuts;
import landfall.wear.Brief;
import landfall.wear.Briefs;
import landfall.wear.Prior;
import landfall.wear.WearLaw;
import org.jspecify.annotations.Nullable;

/** Taps of an invented crib, each made of its events. */
public final class Crib {
    private static final Instant START = Instant.parse("2026-01-05T07:00:00Z");

    private Crib() {}

    /** A tap that has cut so many holes of that depth since it was sharpened, and what happened then. */
    public static OnHand tap(String mark, String callOut, FluteKind kind, WorkMaterial material, Happening... then) {
        CallOut read = CallOuts.read(callOut).orThrow();
        return tap(mark, read, build(kind, null, null), material, List.of(then));
    }

    public static OnHand tap(
            String mark, CallOut callOut, OnHand.Build build, WorkMaterial material, List<Happening> happened) {
        List<Event> events = new ArrayList<>();
        happened.forEach(what ->
                events.add(new Event(events.size() + 1, START.plusSeconds(3600L * events.size()), "Ida", what)));
        History history = History.of(events);
        Brief run = Briefs.of(mark, history).open();
        WearLaw law = WearLaw.of(List.of(), Prior.practice(callOut.thread(), material));
        return new OnHand(mark, callOut, build, history.standing(), run == null ? null : new OnHand.Wearing(law, run));
    }

    public static OnHand.Build build(FluteKind kind, @Nullable Double chamfer, @Nullable Limits pitch) {
        return new OnHand.Build(kind, chamfer, pitch, Body.UNKNOWN, "");
    }

    public static Happening holes(int count, WorkMaterial material, double depthMm) {
        return new Happening.Tapped(
                new Happening.Holes(count, false),
                new Happening.Work(material.id(), Length.ofMm(depthMm)),
                new Happening.Felt(null, null, null));
    }
}
