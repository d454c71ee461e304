// SPDX-License-Identifier: Apache-2.0
package landfall.app.shell;

/** A page that exists, in the order in which the job goes round. The words on the page are the trade's nouns. */
public enum Place {
    TODAY("/", "Today"),
    THREAD("/thread", "Thread"),
    HOLE("/hole", "Hole"),
    TAP("/tap", "Tap"),
    CUT("/cut", "Cut"),
    GRIND("/grind", "Grind"),
    GAUGE("/gauge", "Gauge"),
    CRIB("/crib", "Crib"),
    JOB("/job", "Job"),
    WHY("/why", "Why"),
    METHODS("/methods", "Methods");

    private final String path;
    private final String noun;

    Place(String path, String noun) {
        this.path = path;
        this.noun = noun;
    }

    public String path() {
        return path;
    }

    public String noun() {
        return noun;
    }
}
