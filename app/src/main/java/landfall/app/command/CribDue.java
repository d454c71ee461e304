// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.app.crib.DueBoard;
import landfall.app.crib.DueTaps;
import landfall.cards.answer.Document;
import landfall.cards.answer.JsonAnswer;
import landfall.cards.answer.TextAnswer;
import landfall.cards.crib.DueDocument;
import landfall.cards.crib.Prospect;
import landfall.cards.crib.ProspectDocument;
import landfall.cards.crib.ProspectForm;
import landfall.cards.crib.ShopLaws;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.History;
import landfall.history.Mark;
import landfall.store.crib.Glance;
import landfall.wear.Job;
import org.jspecify.annotations.Nullable;

/** {@code crib due [MARK] [--holes N]}: when taps are due, and whether one lasts the next job. */
final class CribDue implements CribPart {
    @Override
    public String word() {
        return "due";
    }

    @Override
    public String usage() {
        return "due [MARK] [--holes N] [--price P --sharpening P --spoilt P]";
    }

    @Override
    public Options options(Options options, List<String> args) {
        return options.word("MARK")
                .text("holes")
                .text("depth")
                .text("price")
                .text("sharpening")
                .text("spoilt")
                .text("missed");
    }

    @Override
    public Exit run(CribDesk desk) {
        Optional<String> holes = desk.written().text("holes");
        if (holes.isPresent() && !holes.get().matches("[1-9]\\d{0,7}")) {
            return desk.refuse(List.of(new Finding(
                    "holes", holes.get(), "is not a count of holes", "write how many the next job has, such as 120")));
        }
        if (desk.written().word(0).isEmpty()) {
            return holes.isEmpty()
                    ? say(
                            desk,
                            new DueBoard(desk.crib(), new DueTaps(desk.store()))
                                    .document(desk.now().toLocalDate()))
                    : desk.refuse(List.of(new Finding(
                            "holes",
                            holes.get(),
                            "is a question about one tap",
                            "write the mark of the tap before it")));
        }
        Answer<Mark> mark = desk.mark(0);
        if (!(mark instanceof Answer.Of<Mark> of)) {
            return desk.refuse(mark.findings());
        }
        Optional<Glance> kept = desk.find(of.value());
        return kept.isEmpty()
                ? desk.unknown(of.value())
                : one(
                        desk,
                        kept.get(),
                        holes.map(text -> new Job(Integer.parseInt(text), null)).orElse(null));
    }

    private static Exit one(CribDesk desk, Glance kept, @Nullable Job job) {
        Optional<ShopLaws.Found> found =
                new DueTaps(desk.store()).of(kept.item().mark());
        Map<String, String> asked = asked(desk);
        if (found.isPresent() && asked.keySet().stream().anyMatch(path -> !path.equals("holes"))) {
            return prospect(desk, found.get(), asked);
        }
        return found.isPresent()
                ? say(desk, DueDocument.of(found.get(), job))
                : desk.refuse(List.of(new Finding(
                        "mark",
                        kept.item().mark().text(),
                        "has no due: it is no tap, it has ended, or nobody told what it cuts",
                        "log holes with their material: crib log " + kept.item().mark()
                                + " tapped --holes 40 --material \"4140 annealed\"")));
    }

    private static Map<String, String> asked(CribDesk desk) {
        Map<String, String> asked = new LinkedHashMap<>();
        for (String path : ProspectForm.FORM.paths()) {
            desk.written().text(path).ifPresent(text -> asked.put(path, text));
        }
        return asked;
    }

    private static Exit prospect(CribDesk desk, ShopLaws.Found found, Map<String, String> asked) {
        History history =
                desk.crib().find(new Mark(found.tap().mark())).orElseThrow().history();
        Answer<Prospect> prospect = Prospect.of(found, history, asked);
        return prospect instanceof Answer.Of<Prospect> of
                ? say(desk, ProspectDocument.of(of.value()))
                : desk.refuse(prospect.findings());
    }

    private static Exit say(CribDesk desk, Document document) {
        return desk.say(JsonAnswer.write(document), TextAnswer.write(document).stripTrailing());
    }
}
