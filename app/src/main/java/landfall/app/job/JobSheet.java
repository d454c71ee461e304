// SPDX-License-Identifier: Apache-2.0
package landfall.app.job;

import landfall.app.build.Build;
import landfall.cards.job.JobDocument;
import landfall.cards.job.JobState;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.route.Route;
import landfall.sheets.paper.PaperSize;
import landfall.sheets.paper.RouteSheet;
import landfall.sheets.paper.SheetOrder;

/** The route card of a job as paper. */
public final class JobSheet {
    private JobSheet() {}

    public static Answer<PaperSize> paper(String name) {
        return switch (name) {
            case "a4" -> Answer.of(PaperSize.A4);
            case "letter" -> Answer.of(PaperSize.LETTER);
            default -> Answer.refused(new Finding("paper", name, "must be a4 or letter", "write a4 or letter"));
        };
    }

    /** Where the job's page lies for ever, under what phones find this program by. */
    public static Answer<String> address(String base, JobState job) {
        return base.matches("https?://[^\\s/?#]+(/[^\\s?#]*)?")
                ? Answer.of(base.replaceFirst("/$", "") + "/job/" + job.number())
                : Answer.refused(new Finding(
                        "address",
                        base,
                        "is not where phones find this program",
                        "write what they open in the shop's network, such as --address http://toolroom.local:7317"));
    }

    public static byte[] pdf(JobState job, Route route, String address, PaperSize paper) {
        return RouteSheet.pdf(
                new RouteSheet.Content(job, route, address),
                new SheetOrder(JobDocument.units(route), paper, Build.running().words()));
    }
}
