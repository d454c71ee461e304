// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import landfall.cards.form.Field;
import landfall.cards.form.Form;

/**
 * What a field is called on the command line: its path. One word means two things there: {@code --material} is the work
 * material in every question, which a tap card calls {@code cuts}; what the tap is made of is then
 * {@code --tap-material}.
 */
final class OptionName {
    private static final String MATERIAL = "material";
    private static final String CUTS = "cuts";

    private OptionName() {}

    static String of(Field<?> field, Form form) {
        if (field.path().equals(CUTS)) {
            return MATERIAL;
        }
        boolean ofTheTap = field.path().equals(MATERIAL) && form.field(CUTS).isPresent();
        return ofTheTap ? "tap-material" : field.path();
    }
}
