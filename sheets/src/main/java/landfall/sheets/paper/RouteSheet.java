// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import landfall.cards.job.JobState;
import landfall.route.Route;

/** The route card of a job: what is short, the operations in order, one line a hole, as a page to print and as PDF. */
public final class RouteSheet {
    private RouteSheet() {}

    /**
     * What the card is made of.
     *
     * @param address of the job's page, for a phone's own camera
     */
    public record Content(JobState job, Route route, String address) {}

    /** XHTML with its drawings and its style inside. */
    public static String html(Content content, SheetOrder order) {
        return new RoutePage(content).write(order);
    }

    /** The same card as PDF: the same bytes for the same job and order. */
    public static byte[] pdf(Content content, SheetOrder order) {
        return Press.print(html(content, order));
    }
}
