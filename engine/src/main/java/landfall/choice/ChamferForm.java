// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import landfall.quantity.UnitSystem;

/**
 * How long the chamfer is, in threads: as ASME B94.9 and as DIN 2197 call it. An older manual has 8 to 10 and 1 to 1
 * 1/2 for taper and bottoming; a British "plug" is what is called bottoming here.
 */
public enum ChamferForm {
    TAPER("taper", "A", "7 to 10", "6 to 8", 8),
    PLUG("plug", "D", "3 to 5", "3.5 to 5", 4),
    /** With a spiral point the long form is called B. */
    POINTED("plug", "B", "3 to 5", "3.5 to 5.5", 4),
    SEMI_BOTTOMING("semi-bottoming", "C", "2 to 3", "2 to 3", 2.5),
    BOTTOMING("bottoming", "E", "1 to 2", "1.5 to 2", 1.5);

    private final String inchName;
    private final String letter;
    private final String inchThreads;
    private final String metricThreads;
    private final double usual;

    ChamferForm(String inchName, String letter, String inchThreads, String metricThreads, double usual) {
        this.inchName = inchName;
        this.letter = letter;
        this.inchThreads = inchThreads;
        this.metricThreads = metricThreads;
        this.usual = usual;
    }

    /** {@code plug, 3 to 5 threads} or {@code form D, 3.5 to 5 threads}. */
    public String words(UnitSystem system) {
        return system == UnitSystem.INCH
                ? inchName + ", " + inchThreads + " threads"
                : "form " + letter + ", " + metricThreads + " threads";
    }

    /** Threads that depth is reckoned with. */
    double usual() {
        return usual;
    }
}
