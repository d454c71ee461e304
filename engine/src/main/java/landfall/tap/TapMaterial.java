// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

/** What the tap is made of, as far as the wheel must know. */
public enum TapMaterial {
    HSS("HSS"),
    CARBON("carbon"),
    CARBIDE("carbide");

    private final String code;

    TapMaterial(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }
}
