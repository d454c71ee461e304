// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.fault.Answer;
import landfall.quantity.UnitSystem;

/** What was typed, so that it reads the same for ever: a bare figure gets the unit that it was read in. */
public final class Lasting {
    private static final List<String> INCH = List.of("in", "in·lb");
    private static final List<String> METRIC = List.of("mm", "N·m");

    private Lasting() {}

    /** The fields of the form that were given, in its order; every text must have been judged good. */
    public static Map<String, String> of(Form form, Map<String, String> typed, UnitSystem bare) {
        Map<String, String> lasting = new LinkedHashMap<>();
        for (Field<?> field : form.fields()) {
            String text = typed.getOrDefault(field.path(), "").strip();
            if (!text.isEmpty()) {
                lasting.put(field.path(), of(field, text, bare));
            }
        }
        return lasting;
    }

    private static String of(Field<?> field, String text, UnitSystem bare) {
        UnitSystem other = bare == UnitSystem.INCH ? UnitSystem.METRIC : UnitSystem.INCH;
        Optional<?> meant = read(field, text, bare);
        if (meant.equals(read(field, text, other))) {
            return text;
        }
        for (String unit : bare == UnitSystem.INCH ? INCH : METRIC) {
            String longer = text + " " + unit;
            if (meant.equals(read(field, longer, other))) {
                return longer;
            }
        }
        throw new IllegalStateException("no unit makes " + field.path() + " " + text + " last");
    }

    private static Optional<?> read(Field<?> field, String text, UnitSystem bare) {
        Answer<?> read = field.kind().reading().read(text, bare);
        return read instanceof Answer.Of<?> of ? Optional.of(of.value()) : Optional.empty();
    }
}
