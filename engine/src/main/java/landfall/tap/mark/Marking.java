// SPDX-License-Identifier: Apache-2.0
package landfall.tap.mark;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import landfall.fault.Caution;
import landfall.quantity.UnitSystem;
import landfall.thread.CallOut;
import landfall.thread.Hand;

/**
 * What a tap's shank says, read.
 *
 * @param callOut the thread that it cuts, without a class
 * @param mark of its pitch diameter; empty when none was read, or when it stands for no figures
 * @param fields every part of the text with what it means, in the order of the text
 */
public record Marking(CallOut callOut, Optional<TapMark> mark, List<Field> fields, List<Caution> cautions) {
    public Marking {
        fields = List.copyOf(fields);
        cautions = List.copyOf(cautions);
    }

    /**
     * One part of the marking.
     *
     * @param kind thread, limit, material, make, hand, coating, chamfer, flutes, blank, starts, class, unknown
     * @param read the meaning was read in a source; else it is remembered
     */
    public record Field(int at, String text, String kind, String means, boolean read) {}

    private String words(String kind) {
        return fields.stream()
                .filter(field -> field.kind().equals(kind))
                .map(Field::text)
                .findFirst()
                .map(text -> " " + text.toUpperCase(Locale.ROOT))
                .orElse("");
    }

    /** The same in the order of the standard: thread, hand, material, G for ground, limit. */
    public String written() {
        String thread = callOut.normal().replaceFirst("-LH$", "");
        String hand = callOut.thread().hand() == Hand.LEFT ? " LH" : "";
        boolean inch = callOut.thread().family().system() == UnitSystem.INCH;
        String limit = mark.map(TapMark::words).map(words -> limit(words, inch)).orElse("");
        return thread + hand + words("material") + limit + words("chamfer") + words("coating");
    }

    private static String limit(String words, boolean inch) {
        if (words.equals("cut thread")) {
            return " CUT";
        }
        return (inch || words.startsWith("D") ? " G " : " ") + words;
    }
}
