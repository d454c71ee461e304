// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

/** How the hole ends. */
public enum HoleEnd {
    BLIND("blind"),
    THROUGH("through");

    private final String code;

    HoleEnd(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }
}
