// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.List;
import java.util.Map;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.fault.Finding;

/**
 * What a field is called on the command line: its path. One word means two things there: {@code --material} is the work
 * material in every question, which a tap card calls {@code cuts}; what the tap is made of is then
 * {@code --tap-material}.
 */
final class OptionName {
    private static final String MATERIAL = "material";
    private static final String CUTS = "cuts";

    private OptionName() {}

    /** Findings of fields under the names that were written on the command line. */
    static List<Finding> asTyped(List<Finding> findings, Map<String, String> names) {
        return findings.stream()
                .map(found -> new Finding(
                        names.getOrDefault(found.field(), found.field()), found.given(), found.why(), found.mend()))
                .toList();
    }

    static String of(Field<?> field, Form form) {
        if (field.path().equals(CUTS)) {
            return MATERIAL;
        }
        boolean ofTheTap = field.path().equals(MATERIAL) && form.field(CUTS).isPresent();
        return ofTheTap ? "tap-material" : field.path();
    }
}
