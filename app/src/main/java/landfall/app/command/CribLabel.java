// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.app.crib.CribJson;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.Mark;
import landfall.sheets.paper.Label;
import landfall.sheets.paper.LabelSheet;
import landfall.sheets.paper.PaperSize;
import landfall.store.crib.Crib;
import landfall.store.crib.Glance;
import landfall.store.crib.Item;

/** {@code crib label MARK... --sheet FILE.pdf}: labels that a phone's camera opens the thing's page from. */
final class CribLabel implements CribPart {
    private static final int MOST = 500;

    @Override
    public String word() {
        return "label";
    }

    @Override
    public String usage() {
        return "label MARK.. --sheet FILE.pdf";
    }

    @Override
    public Options options(Options options, List<String> args) {
        options.text("sheet").text("address").text("paper");
        for (int i = 0; i < Math.min(MOST, args.size()); i++) {
            options.word("MARK");
        }
        return options;
    }

    @Override
    public Exit run(CribDesk desk) {
        List<Finding> findings = new ArrayList<>();
        String address = desk.written().text("address").orElse("");
        String sheet = desk.written().text("sheet").orElse("");
        if (!address.matches("https?://[^\\s/?#]+(/[^\\s?#]*)?")) {
            findings.add(new Finding(
                    "address",
                    address,
                    "is not where phones find this program",
                    "write what they open in the shop's network, such as --address http://toolroom.local:7317"));
        }
        if (sheet.isEmpty()) {
            findings.add(new Finding("sheet", "", "is needed", "write --sheet labels.pdf"));
        }
        Answer<PaperSize> paper = paper(desk.written().text("paper").orElse("a4"));
        findings.addAll(paper.findings());
        List<Item> items = new ArrayList<>();
        boolean unknown = items(desk, items, findings);
        if (!findings.isEmpty()) {
            Exit refused = desk.refuse(findings);
            return unknown && findings.size() == 1 ? Exit.NO_RECORD : refused;
        }
        return write(desk, sheet, labels(items, address), paper.orThrow());
    }

    /** Whether a mark is not in the crib. */
    private static boolean items(CribDesk desk, List<Item> items, List<Finding> findings) {
        boolean unknown = false;
        for (int place = 0; desk.written().word(place).isPresent(); place++) {
            Answer<Mark> mark = desk.mark(place);
            if (!(mark instanceof Answer.Of<Mark> of)) {
                findings.addAll(mark.findings());
                continue;
            }
            Optional<Glance> kept = desk.find(of.value());
            kept.ifPresent(found -> items.add(found.item()));
            if (kept.isEmpty()) {
                unknown = true;
                findings.add(Crib.unknown(of.value()));
            }
        }
        if (items.isEmpty() && findings.isEmpty()) {
            findings.addAll(desk.mark(0).findings());
        }
        return unknown;
    }

    private static Answer<PaperSize> paper(String name) {
        return switch (name) {
            case "a4" -> Answer.of(PaperSize.A4);
            case "letter" -> Answer.of(PaperSize.LETTER);
            default -> Answer.refused(new Finding("paper", name, "must be a4 or letter", "write a4 or letter"));
        };
    }

    private static List<Label> labels(List<Item> items, String address) {
        String base = address.replaceFirst("/$", "");
        return items.stream()
                .map(item -> new Label(
                        item.mark().text(),
                        (item.kind().word() + " " + item.words()).strip(),
                        base + "/crib/" + item.mark().text()))
                .toList();
    }

    private static Exit write(CribDesk desk, String sheet, List<Label> labels, PaperSize paper) {
        try {
            Files.write(Path.of(sheet), LabelSheet.pdf(labels, paper));
        } catch (IOException | InvalidPathException e) {
            return desk.refuse(List.of(new Finding(
                    "sheet", sheet, "cannot be written", "name a file in a folder that can be written to")));
        }
        return desk.say(
                CribJson.facts(Map.of("labels", labels.size(), "file", sheet)),
                Words.of("crib.labelled", labels.size(), sheet));
    }
}
