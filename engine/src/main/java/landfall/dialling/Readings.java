// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import landfall.grind.Place;
import landfall.quantity.Length;

/**
 * Readings of one dial in one place, in one chucking.
 *
 * @param list in the order taken; a place read twice counts twice
 * @param resolution the dial's division, or the step to which it was read
 * @param flutes lands round the tap
 */
public record Readings(List<Reading> list, Length resolution, int flutes) {
    public Readings {
        list = List.copyOf(list);
        List<Finding> findings = findings(list, resolution, flutes);
        if (!findings.isEmpty()) {
            throw new OutOfRange(findings.get(0));
        }
    }

    /** The readings, or every reason why they cannot be used. */
    public static Answer<Readings> of(List<Reading> list, Length resolution, int flutes) {
        List<Finding> findings = findings(list, resolution, flutes);
        return findings.isEmpty() ? Answer.of(new Readings(list, resolution, flutes)) : Answer.refused(findings);
    }

    public Place place() {
        return list.get(0).place();
    }

    int[] lands() {
        return list.stream().mapToInt(Reading::land).sorted().distinct().toArray();
    }

    double[] values() {
        return list.stream().mapToDouble(reading -> reading.value().mm()).toArray();
    }

    /** Land angles at which there is a reading, ascending, each once. */
    double[] anglesDeg() {
        return list.stream()
                .mapToDouble(reading -> reading.angle().deg())
                .sorted()
                .distinct()
                .toArray();
    }

    Readings without(Reading reading) {
        List<Reading> rest = new ArrayList<>(list);
        rest.remove(reading);
        return new Readings(rest, resolution, flutes);
    }

    private static List<Finding> findings(List<Reading> list, Length resolution, int flutes) {
        List<Finding> findings = new ArrayList<>();
        if (flutes < 1) {
            findings.add(new Finding("flutes", "" + flutes, "must be 1 or more", "count the flutes of the tap"));
            return findings;
        }
        if (resolution.mm() <= 0) {
            findings.add(new Finding(
                    "resolution",
                    Numbers.plain(resolution.mm()) + " mm",
                    "must be more than 0",
                    "give the dial's division, such as 0.01 mm or .0005 in"));
        }
        if (list.isEmpty()) {
            findings.add(new Finding("readings", "none", "must be at least two", "read each land at four angles"));
        }
        for (int i = 0; i < list.size(); i++) {
            judge(list.get(i), flutes, "reading " + (i + 1), list.get(0).place(), findings);
        }
        return findings;
    }

    private static void judge(Reading reading, int flutes, String field, Place place, List<Finding> findings) {
        if (reading.land() < 1 || reading.land() > flutes) {
            findings.add(new Finding(
                    field + ".land",
                    "" + reading.land(),
                    "must be from 1 to " + flutes + ", the lands of this tap",
                    "count the lands backwards from land 1"));
        }
        double period = 360.0 / flutes;
        if (Math.abs(reading.angle().deg()) >= period) {
            findings.add(new Finding(
                    field + ".angle",
                    Numbers.plain(reading.angle().deg()) + " deg",
                    "must be less than " + Numbers.plain(period) + " deg, where the next land begins",
                    "count the angle from that land's own edge"));
        }
        if (reading.place() != place) {
            findings.add(new Finding(
                    field + ".place",
                    reading.place().toString(),
                    "must be " + place + " like the first reading",
                    "give the readings of each place as a set of their own"));
        }
    }
}
