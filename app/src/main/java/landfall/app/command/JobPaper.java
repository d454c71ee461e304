// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import landfall.app.crib.CribJson;
import landfall.app.job.JobSheet;
import landfall.app.serve.Listen;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.route.Route;
import landfall.sheets.paper.PaperSize;
import landfall.store.job.KeptJob;
import landfall.working.Worked;

/** {@code job card NUMBER --sheet FILE.pdf}: the route card, with a square code that opens the job's page. */
final class JobPaper implements CribPart {
    @Override
    public String word() {
        return "card";
    }

    @Override
    public String usage() {
        return "card NUMBER --sheet FILE.pdf";
    }

    @Override
    public Options options(Options options, List<String> args) {
        return options.word("NUMBER").text("sheet").text("paper").text("address");
    }

    @Override
    public Exit run(CribDesk desk) {
        return JobKept.with(desk, job -> print(desk, job));
    }

    private static Exit print(CribDesk desk, KeptJob job) {
        List<Finding> findings = new ArrayList<>();
        String sheet = desk.written().text("sheet").orElse("");
        if (sheet.isEmpty()) {
            findings.add(new Finding("sheet", "", "is needed", "write --sheet card.pdf"));
        }
        Answer<PaperSize> paper = JobSheet.paper(desk.written().text("paper").orElse("a4"));
        findings.addAll(paper.findings());
        Answer<String> address = JobSheet.address(
                desk.written().text("address").orElse("http://localhost:" + Listen.USUAL_PORT), job.state());
        findings.addAll(address.findings());
        if (!findings.isEmpty()) {
            return desk.refuse(findings);
        }
        Answer<Worked<Route>> route = JobTyped.plan(desk, job.state().card());
        return route instanceof Answer.Of<Worked<Route>> of
                ? write(desk, sheet, JobSheet.pdf(job.state(), of.value().value(), address.orThrow(), paper.orThrow()))
                : desk.refuse(route.findings());
    }

    private static Exit write(CribDesk desk, String sheet, byte[] pdf) {
        try {
            Files.write(Path.of(sheet), pdf);
        } catch (IOException | InvalidPathException e) {
            return desk.refuse(List.of(new Finding(
                    "sheet", sheet, "cannot be written", "name a file in a folder that can be written to")));
        }
        String local = desk.written().has("address") ? "" : " " + Words.of("job.cardLocal");
        return desk.say(CribJson.facts(Map.of("file", sheet)), Words.of("job.cardWritten", sheet) + local);
    }
}
