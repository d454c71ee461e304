// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

import landfall.quantity.UnitSystem;

/** The families of threads, with the system of units that their call-outs are written in. */
public enum Family {
    UNIFIED("unified", UnitSystem.INCH),
    METRIC("metric", UnitSystem.METRIC);

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
