// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.gauge.GaugeWish;
import landfall.gauge.Gauging;
import landfall.gauge.ThreadGauges;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;
import landfall.thread.SideLimits;
import landfall.working.Pen;

/**
 * The sketches of one gauging. Ids begin with a prefix, so that a page can hold the sketches of two.
 *
 * @param wish what was given, for the V-anvil
 */
public record GaugeSketches(Gauging gauging, GaugeWish wish, Figures figures, String prefix) {

    public List<Drawing> all(Ink ink) {
        List<Drawing> all = new ArrayList<>();
        gauges().ifPresent(view -> all.add(view.draw(prefix + "-gauges", ink)));
        all.add(new WiresView(gauging, figures).draw(prefix + "-wires", ink));
        all.add(new GrooveView(gauging, figures).draw(prefix + "-groove", ink));
        GaugeWish.InVAnvil given = wish.anvil();
        if (given != null && gauging.anvil() != null) {
            all.add(new AnvilView(gauging, given, figures).draw(prefix + "-anvil", ink));
        }
        return all;
    }

    private Optional<GaugeView> gauges() {
        ThreadGauges gauges = gauging.gauges();
        if (gauges == null) {
            return Optional.empty();
        }
        Optional<SideLimits> product = gauging.callOut().limits(gauges.side(), Pen.NONE);
        return product.map(limits -> new GaugeView(limits, gauges, figures));
    }
}
