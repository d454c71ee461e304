// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

import landfall.quantity.UnitSystem;

/** The families of threads, with the system of units that their call-outs are written in. */
public enum Family {
    UNIFIED("unified", UnitSystem.INCH),
    UNJ("unj", UnitSystem.INCH),
    METRIC("metric", UnitSystem.METRIC),
    MJ("mj", UnitSystem.METRIC),
    NPT("npt", UnitSystem.INCH),
    NPTF("nptf", UnitSystem.INCH),
    /** Parallel pipe thread, ISO 228. */
    G("g", UnitSystem.METRIC),
    /** Pipe threads of ISO 7: taper external R, taper internal Rc, parallel internal Rp. */
    R("r", UnitSystem.METRIC),
    WHITWORTH("whitworth", UnitSystem.INCH),
    BA("ba", UnitSystem.METRIC),
    ACME("acme", UnitSystem.INCH),
    STUB_ACME("stub-acme", UnitSystem.INCH),
    TRAPEZOIDAL("trapezoidal", UnitSystem.METRIC),
    /** Holes for wire thread inserts. */
    STI_INCH("sti-inch", UnitSystem.INCH),
    STI_METRIC("sti-metric", UnitSystem.METRIC);

    private final String code;
    private final UnitSystem system;

    Family(String code, UnitSystem system) {
        this.code = code;
        this.system = system;
    }

    /** As written in JSON. */
    public String code() {
        return code;
    }

    public UnitSystem system() {
        return system;
    }
}
