// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

/** How a command ends. */
public enum Exit {
    DONE(0),
    FAULT(1),
    REFUSED(2),
    NO_RECORD(3);

    private final int code;

    Exit(int code) {
        this.code = code;
    }

    public int code() {
        return code;
    }
}
