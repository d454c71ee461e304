// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.cards.entry.LengthEntry;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.thread.CallOut;
import landfall.thread.insert.InsertCallOut;
import org.jspecify.annotations.Nullable;

/** Length of a wire insert as people say it: in diameters of the screw, or as a length. One of the two is null. */
record InsertLength(@Nullable Double diameters, @Nullable Length length) {
    private static final Pattern IN_DIAMETERS = Pattern.compile("([0-9]*\\.?[0-9]+)\\s*(?:x\\s*)?d");
    private static final double MOST_DIAMETERS = 5;

    static Answer<InsertLength> read(String text, UnitSystem bare) {
        Matcher said = IN_DIAMETERS.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!said.matches()) {
            return LengthEntry.read(text, bare).map(length -> new InsertLength(null, length));
        }
        double diameters = Double.parseDouble(said.group(1));
        return diameters >= 1 && diameters <= MOST_DIAMETERS
                ? Answer.of(new InsertLength(diameters, null))
                : Answer.refused(new Finding(
                        "", text, "must be from 1 to 5 diameters", "write 1 D, 1.5 D, 2 D, 2.5 D, 3 D or a length"));
    }

    /** For this hole; of a hole that takes no insert its own diameter is taken, and the engine refuses it. */
    Length of(CallOut callOut) {
        if (diameters == null) {
            return Objects.requireNonNull(length);
        }
        CallOut screw = callOut instanceof InsertCallOut insert ? insert.nominal() : callOut;
        return screw.thread().major().times(diameters);
    }
}
