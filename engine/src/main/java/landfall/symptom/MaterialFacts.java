// SPDX-License-Identifier: Apache-2.0
package landfall.symptom;

import java.util.Map;
import landfall.material.ChipClass;
import landfall.material.WorkGroup;
import landfall.material.WorkMaterial;
import landfall.thread.CallOut;
import org.jspecify.annotations.Nullable;

/** What the material says. */
final class MaterialFacts {
    private MaterialFacts() {}

    static void tell(WorkMaterial material, @Nullable CallOut callOut, Map<String, Fact> facts) {
        ChipClass chip = material.cutting().chip().value().kind();
        String chips = material.id() + " makes chips that are "
                + material.cutting().chip().value().words() + ".";
        facts.put(
                "gummy",
                switch (chip) {
                    case STRINGY -> Fact.up(chips);
                    case LONG -> Fact.plain(chips);
                    default -> Fact.down(chips);
                });
        facts.put(
                "fluid",
                Fact.plain("For " + material.id() + ": "
                        + material.cutting().fluid().value().words() + "."));
        if (callOut != null) {
            speed(material, callOut, facts);
        }
        boolean hardens = material.group().hardensUnderTheTool();
        facts.put(
                "hardens",
                hardens
                        ? Fact.up(material.id() + " hardens where it is rubbed.")
                        : Fact.down(material.id() + " is not known to harden under the tool."));
        boolean springs = material.group() == WorkGroup.TITANIUM_NICKEL || material.group() == WorkGroup.PLASTIC;
        facts.put(
                "springs",
                springs
                        ? Fact.up(material.id() + " springs back.")
                        : Fact.plain(material.id() + " springs back little in thick walls."));
        facts.put(
                "relief",
                Fact.plain("Chamfer relief for %s: %.0f to %.0f deg, static, square to the axis (common practice)."
                        .formatted(
                                material.id(),
                                material.relief().least().deg(),
                                material.relief().greatest().deg())));
    }

    private static void speed(WorkMaterial material, CallOut callOut, Map<String, Fact> facts) {
        var range = material.cutting().speed().value();
        double round = Math.PI * callOut.thread().major().mm() / 1000;
        facts.put(
                "speed",
                Fact.plain("For %s %.0f to %.0f m/min with HSS: %.0f to %.0f rev/min on this thread; less when deep."
                        .formatted(
                                material.id(),
                                range.least().mPerMin(),
                                range.greatest().mPerMin(),
                                range.least().mPerMin() / round,
                                range.greatest().mPerMin() / round)));
    }
}
