// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.app.crib.CribJson;
import landfall.cards.crib.EventForms;
import landfall.cards.crib.Told;
import landfall.cards.form.Field;
import landfall.cards.form.Kinds;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.EventKind;
import landfall.history.Mark;
import landfall.store.crib.Glance;
import landfall.store.crib.Logged;
import landfall.store.crib.Saying;

/** {@code crib log MARK EVENT [fields]}: something happened. */
final class CribLog implements CribPart {
    @Override
    public String word() {
        return "log";
    }

    @Override
    public String usage() {
        return "log MARK EVENT";
    }

    @Override
    public Options options(Options options, List<String> args) {
        options.word("MARK").word("EVENT").text("at").text("by").text("ticket").text("after");
        for (Field<?> field : fields(args)) {
            if (field.kind() == Kinds.YES_NO) {
                options.yes(field.path());
            } else {
                options.text(field.path());
            }
        }
        return options;
    }

    /** Those of the event that was written; of all events, where none can be told from it. */
    private static List<Field<?>> fields(List<String> args) {
        for (EventKind kind : EventKind.values()) {
            if (args.contains(kind.word())) {
                return EventForms.of(kind).fields();
            }
        }
        Map<String, Field<?>> all = new LinkedHashMap<>();
        for (EventKind kind : EventKind.values()) {
            EventForms.of(kind).fields().forEach(field -> all.putIfAbsent(field.path(), field));
        }
        return List.copyOf(all.values());
    }

    @Override
    public Exit run(CribDesk desk) {
        Answer<Mark> mark = desk.mark(0);
        Answer<EventKind> kind = EventForms.kind(desk.written().word(1).orElse(""));
        if (!(mark instanceof Answer.Of<Mark> marked) || !(kind instanceof Answer.Of<EventKind> known)) {
            List<Finding> findings = new ArrayList<>(mark.findings());
            findings.addAll(kind.findings());
            return desk.refuse(findings);
        }
        Optional<Glance> there = desk.find(marked.value());
        return there.isEmpty() ? desk.unknown(marked.value()) : log(desk, there.get(), known.value());
    }

    private static Exit log(CribDesk desk, Glance there, EventKind kind) {
        Map<String, String> typed = new LinkedHashMap<>();
        EventForms.of(kind)
                .fields()
                .forEach(field -> desk.written().text(field.path()).ifPresent(text -> typed.put(field.path(), text)));
        Answer<Told> told = Told.read(kind, typed, there.item().bare());
        Answer<Instant> at = desk.at();
        Answer<Optional<Long>> after = after(desk);
        List<Finding> findings = new ArrayList<>(told.findings());
        findings.addAll(at.findings());
        findings.addAll(after.findings());
        if (!findings.isEmpty()) {
            return desk.refuse(findings);
        }
        Answer<Logged> logged = desk.crib()
                .log(new Saying(
                        there.item().mark(),
                        told.orThrow(),
                        new Saying.Who(desk.by(), at.orThrow()),
                        desk.written().text("ticket").orElse(null),
                        after.orThrow().orElse(null)));
        if (!(logged instanceof Answer.Of<Logged> of)) {
            return desk.refuse(logged.findings());
        }
        Logged kept = of.value();
        return desk.say(
                CribJson.logged(kept), Words.of("crib.logged", kept.item().mark(), kept.seq(), kind.word()));
    }

    private static Answer<Optional<Long>> after(CribDesk desk) {
        Optional<String> text = desk.written().text("after");
        if (text.isEmpty()) {
            return Answer.of(Optional.empty());
        }
        return text.get().matches("\\d{1,12}")
                ? Answer.of(Optional.of(Long.valueOf(text.get())))
                : Answer.refused(new Finding(
                        "after", text.get(), "is not the number of an event", "write the number that crib show tells"));
    }
}
