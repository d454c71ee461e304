// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import landfall.fault.Caution;
import landfall.gauge.MeasuredPitch;
import landfall.gauge.ReadingUncertainty;
import landfall.verdict.Examination;
import landfall.verdict.Found;

/** The cautions of gauging and of the verdict, those about the verdict first. */
final class GaugeCautions {
    private GaugeCautions() {}

    static List<Caution> of(Examination examination) {
        List<Caution> cautions = new ArrayList<>();
        MeasuredPitch pitch = examination.pitch();
        if (pitch != null && pitch.assumed()) {
            ReadingUncertainty usual = ReadingUncertainty.USUAL;
            cautions.add(new Caution(
                    "uncertaintyAssumed",
                    String.format(
                            Locale.ROOT,
                            "The uncertainty of the reading was not told: %s taken for it, %s for the wires, %s for the crests"
                                    + " and %.1f deg for the half angle where they count (common practice).",
                            usual.reading().words(),
                            usual.wire().words(),
                            usual.crest().words(),
                            usual.flank().deg()),
                    "uncertainty"));
        }
        Found found = examination.found();
        if (found != null) {
            cautions.addAll(found.cautions());
        }
        cautions.addAll(examination.gauging().cautions());
        return cautions.stream().distinct().toList();
    }
}
