// SPDX-License-Identifier: Apache-2.0
package landfall.thread.power;

import landfall.working.Rule;

/** General purpose classes; each is a class of screws and of nuts. */
public enum AcmeClass {
    G2("2G", 0.008, 0.006, 0.030),
    G3("3G", 0.006, 0.0028, 0.014),
    G4("4G", 0.004, 0.002, 0.010);

    private final String code;
    private final double allowance;
    private final double byDiameter;
    private final double byPitch;
    private final Rule allowanceRule;
    private final Rule toleranceRule;

    AcmeClass(String code, double allowance, double byDiameter, double byPitch) {
        this.code = code;
        this.allowance = allowance;
        this.byDiameter = byDiameter;
        this.byPitch = byPitch;
        this.allowanceRule =
                AcmeRules.rule("es", "round(" + allowance + " * sqrt(D), 0.0001)", "allowance, class " + code);
        this.toleranceRule = AcmeRules.rule(
                "T", byDiameter + " * sqrt(D) + " + byPitch + " * sqrt(P)", "pitch diameter tolerance, class " + code);
    }

    public String code() {
        return code;
    }

    double allowance(double D) {
        return allowance * Math.sqrt(D);
    }

    double tolerance(double D, double p) {
        return byDiameter * Math.sqrt(D) + byPitch * Math.sqrt(p);
    }

    Rule allowanceRule() {
        return allowanceRule;
    }

    Rule toleranceRule() {
        return toleranceRule;
    }
}
