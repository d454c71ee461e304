// SPDX-License-Identifier: Apache-2.0
package landfall.thread.metric;

import landfall.thread.Side;

/**
 * A tolerance zone of a metric thread: grade and position of the pitch diameter, then of the crest diameter.
 *
 * @param pitchGrade 3 to 9 outside, 4 to 8 inside
 * @param crestGrade of the major diameter outside (4, 6, 8), of the minor diameter inside (4 to 8)
 * @param pitchPosition e f g h outside, G H inside
 */
public record Zone(int pitchGrade, char pitchPosition, int crestGrade, char crestPosition) {
    public Side side() {
        return Character.isLowerCase(pitchPosition) ? Side.EXTERNAL : Side.INTERNAL;
    }

    /** {@code 6H}, or {@code 5g6g} where pitch and crest differ. */
    public String code() {
        String pitch = "" + pitchGrade + pitchPosition;
        String crest = "" + crestGrade + crestPosition;
        return pitch.equals(crest) ? pitch : pitch + crest;
    }

    static Zone of(int grade, char position) {
        return new Zone(grade, position, grade, position);
    }
}
