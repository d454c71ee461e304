// SPDX-License-Identifier: Apache-2.0
package landfall.symptom;

import java.util.Map;
import landfall.material.ChipClass;
import landfall.material.WorkGroup;
import landfall.material.WorkMaterial;

/** What the material says. */
final class MaterialFacts {
    private MaterialFacts() {}

    static void tell(WorkMaterial material, Map<String, Fact> facts) {
        ChipClass chip = material.cutting().chip().value().kind();
        boolean stringy = chip == ChipClass.STRINGY || chip == ChipClass.LONG;
        String chips = material.id() + " makes chips that are "
                + material.cutting().chip().value().words() + ".";
        facts.put("gummy", stringy ? Fact.up(chips) : Fact.down(chips));
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
}
