// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import landfall.cards.crib.Moments;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.Mark;
import landfall.store.Store;
import landfall.store.crib.Crib;
import landfall.store.crib.Glance;
import landfall.store.crib.Window;

/** Where a command of the crib is answered: the open store, what was written, and whom to tell. */
record CribDesk(Store store, Options.Written written, boolean json, Terminal terminal) {
    Crib crib() {
        return new Crib(store);
    }

    ZonedDateTime now() {
        return ZonedDateTime.now(ZoneId.systemDefault()).truncatedTo(ChronoUnit.MILLIS);
    }

    Exit refuse(List<Finding> findings) {
        return Refusals.say(findings, json, terminal);
    }

    /** Says the answer as it was asked for. */
    Exit say(String forPrograms, String forPeople) {
        terminal.out().println(json ? forPrograms : forPeople);
        return Exit.DONE;
    }

    /** The mark in that place; one that is missing is a finding. */
    Answer<Mark> mark(int place) {
        return written.word(place)
                .map(Mark::read)
                .orElseGet(() ->
                        Answer.refused(new Finding("mark", "", "is needed", "write the mark, see landfall crib list")));
    }

    /** A thing as it stands, without what happened to it. */
    Optional<Glance> find(Mark mark) {
        return crib().look(mark, Window.newest(0));
    }

    Exit unknown(Mark mark) {
        Refusals.say(List.of(Crib.unknown(mark)), json, terminal);
        return Exit.NO_RECORD;
    }

    Answer<Instant> at() {
        return written.text("at")
                .map(text -> Moments.read("at", text, now()))
                .orElseGet(() -> Answer.of(now().toInstant()));
    }

    /** Who says so: as told, else the user of this machine. */
    String by() {
        return written.text("by").orElse(System.getProperty("user.name", "unknown"));
    }
}
