// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.gauge.GaugeElement;
import landfall.gauge.Gauging;
import landfall.gauge.MeasuredPitch;
import landfall.gauge.ThreadGauges;
import landfall.gauge.ThreeWires;
import landfall.gauge.VAnvil;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.thread.Side;
import landfall.verdict.Examination;
import org.jspecify.annotations.Nullable;

/** Gauging laid out as items. */
final class GaugeItems {
    private final Behind behind;

    GaugeItems(Behind behind) {
        this.behind = behind;
    }

    List<Item> of(Examination examination) {
        Gauging gauging = examination.gauging();
        MeasuredPitch pitch = examination.pitch();
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("callout", gauging.callOut().normal()));
        ThreadGauges gauges = gauging.gauges();
        if (gauges != null) {
            items.add(new Item.Text("kind", gauges.side() == Side.INTERNAL ? "plug" : "ring"));
            items.add(element("go", gauges.go(), "E_go", "D_go"));
            items.add(element("notGo", gauges.notGo(), "E_ng", "D_ng"));
            items.add(behind.figure("plainGo", gauges.plain().go(), "p_go"));
            Length plainNotGo = gauges.plain().notGo();
            if (plainNotGo != null) {
                items.add(behind.figure("plainNotGo", plainNotGo, "p_ng"));
            }
        }
        items.add(wires(gauging, pitch));
        VAnvil anvil = gauging.anvil();
        if (anvil != null) {
            items.add(inV(anvil, pitch));
        }
        if (examination.taper() != null) {
            items.add(new TaperItems(behind).plug(examination.taper()));
        }
        if (examination.found() != null) {
            items.addAll(new FoundItems(behind).of(examination.found()));
        }
        return items;
    }

    private Item inV(VAnvil anvil, @Nullable MeasuredPitch pitch) {
        List<Item> items = new ArrayList<>(List.of(
                behind.figure("angle", anvil.angle(), "V"),
                behind.figure("factor", anvil.factor(), Unit.PURE, "k_V"),
                behind.figure("pitchDiameter", anvil.pitchDiameter(), "E_V")));
        if (pitch != null && pitch.way() == MeasuredPitch.Way.IN_V_ANVIL) {
            uncertainty(pitch, items);
        }
        return new Item.Group("vAnvil", items);
    }

    /** How well the pitch diameter is known, and from what. */
    private void uncertainty(MeasuredPitch pitch, List<Item> items) {
        items.add(behind.figure("uncertainty", pitch.uncertainty().expanded(), "U_E", "U_EV"));
        items.add(new Item.Rows(
                "shares",
                pitch.uncertainty().parts().stream()
                        .map(part -> Item.Group.of(
                                "part",
                                new Item.Text("what", part.what()),
                                behind.figure("share", part.percent(), Unit.SHARE, "s_U")))
                        .toList()));
    }

    private Item element(String key, GaugeElement element, String pitch, String major) {
        return Item.Group.of(key, range("pitch", element.pitch(), pitch), range("major", element.major(), major));
    }

    private Item.Range range(String key, Limits limits, String symbol) {
        return new Item.Range(key, end(limits.min(), symbol + ".min"), end(limits.max(), symbol + ".max"), Unit.LENGTH);
    }

    private Item.@Nullable Point end(@Nullable Length length, String symbol) {
        return length == null ? null : behind.point(length.mm(), Unit.LENGTH, symbol);
    }

    private Item wires(Gauging gauging, @Nullable MeasuredPitch pitch) {
        List<Item> items = new ArrayList<>();
        items.add(behind.figure("best", gauging.wires().best(), "W_best"));
        items.add(behind.figure("least", gauging.wires().least(), "W_least"));
        items.add(behind.figure("greatest", gauging.wires().greatest(), "W_most"));
        items.add(behind.figure("wire", gauging.wire(), "W"));
        items.add(behind.figure("leadTerm", gauging.leadTerm(), "t_L"));
        ThreeWires.Measurement measured = gauging.measured();
        if (measured != null) {
            items.add(behind.figure("over", measured.over(), "M"));
            items.add(behind.figure("pitchDiameter", measured.pitchDiameter(), "E"));
            items.add(
                    new Item.Text("way", measured.numeric() ? "wire laid on the helicoid" : "formula with lead term"));
            if (pitch != null && pitch.way() != MeasuredPitch.Way.IN_V_ANVIL) {
                uncertainty(pitch, items);
            }
        }
        return new Item.Group("wires", items);
    }
}
