// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import org.jspecify.annotations.Nullable;

/**
 * One check of a reground tap.
 *
 * @param code stable name
 * @param with what to measure and with which instrument of the shop
 * @param rule target and tolerance in words
 * @param found in words; empty where it was not measured
 * @param verdict null where it was not measured
 */
public record Check(
        String code,
        String with,
        String rule,
        String found,
        @Nullable Verdict verdict) {}
