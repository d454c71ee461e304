// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import landfall.fault.Caution;
import landfall.gauge.MeasuredPitch;
import landfall.gauge.ReadingUncertainty;
import landfall.quantity.Length;
import landfall.verdict.Examination;
import landfall.verdict.Found;

/** The cautions of gauging and of the verdict, those about the verdict first. */
final class GaugeCautions {
    private GaugeCautions() {}

    /** Too small for the places of {@link Length#words}. */
    private static String micrometres(Length length) {
        return String.format(Locale.ROOT, "%.4f mm (%.5f in)", length.mm(), length.inch());
    }

    static List<Caution> of(Examination examination) {
        List<Caution> cautions = new ArrayList<>();
        MeasuredPitch pitch = examination.pitch();
        ReadingUncertainty usual = ReadingUncertainty.USUAL;
        if (pitch != null && pitch.assumed()) {
            cautions.add(new Caution(
                    "uncertaintyAssumed",
                    ("The uncertainty of the reading was not told. Taken (common practice): %s for it,"
                                            + " and where they count %s for")
                                    .formatted(micrometres(usual.reading()), micrometres(usual.wire()))
                            + " the wires, %s for the crests, %.1f deg for the half angle."
                                    .formatted(
                                            micrometres(usual.crest()),
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
