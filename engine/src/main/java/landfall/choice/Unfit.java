// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

/**
 * Why a tap cannot do a hole.
 *
 * @param says in a sentence, with the figures
 */
public record Unfit(Why why, String says) {
    /** The kinds of reason, the ones that nothing mends first. */
    public enum Why {
        THREAD,
        BROKEN,
        SCRAPPED,
        /** Its pitch diameter leaves a thread outside the limits of the hole. */
        LIMIT,
        /** A forming tap in what does not flow. */
        FORMING,
        /** Thread and shank are too short for the depth. */
        REACH,
        /** It did not pass its last inspection. */
        FAILED,
        /** Another shop has it. */
        LENT,
        /** More likely than not it reaches its wear limit before the last hole. */
        DULL;

        /** As written in JSON. */
        public String code() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }
}
