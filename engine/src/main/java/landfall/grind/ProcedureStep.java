// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * One step of the set-up, with a box to tick.
 *
 * @param code stable name
 * @param angle target of the step, null when it has none
 * @param length target of the step, null when it has none
 * @param note whether a reading is to be noted
 */
public record ProcedureStep(
        String code,
        String text,
        @Nullable Angle angle,
        @Nullable Length length,
        boolean note) {
    static ProcedureStep tick(String code, String text) {
        return new ProcedureStep(code, text, null, null, false);
    }

    static ProcedureStep reading(String code, String text) {
        return new ProcedureStep(code, text, null, null, true);
    }

    static ProcedureStep set(String code, String text, Angle angle) {
        return new ProcedureStep(code, text, angle, null, true);
    }

    static ProcedureStep set(String code, String text, Length length) {
        return new ProcedureStep(code, text, null, length, true);
    }
}
