// SPDX-License-Identifier: Apache-2.0
package landfall.app.job;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import landfall.cards.job.Amiss;
import landfall.fault.Finding;
import landfall.store.job.KeptJob;

/** What is said of jobs to programs besides the plan itself. */
public final class JobJson {
    private static final ObjectMapper JSON = new ObjectMapper();

    private JobJson() {}

    /** {@code job list}. */
    public static String list(List<KeptJob> jobs) {
        ObjectNode answer = JSON.createObjectNode();
        ArrayNode all = answer.putArray("jobs");
        for (KeptJob job : jobs) {
            all.addObject()
                    .put("number", job.state().number())
                    .put("name", job.state().card().name())
                    .put("at", job.made().at().toString())
                    .put("by", job.made().by())
                    .put("holes", job.state().holes())
                    .put("done", job.state().holesDone());
        }
        answer.putArray("working");
        answer.putArray("cautions");
        return answer.toString();
    }

    /** Everything that is amiss, each with its line; line 0 is the job as a whole. */
    public static String refusal(List<Amiss> amiss) {
        ObjectNode answer = JSON.createObjectNode();
        ArrayNode refused = answer.putArray("refused");
        for (Amiss one : amiss) {
            Finding finding = one.finding();
            refused.addObject()
                    .put("line", one.at())
                    .put("field", finding.field())
                    .put("given", finding.given())
                    .put("why", finding.why())
                    .put("mend", finding.mend());
        }
        return answer.toString();
    }
}
