// SPDX-License-Identifier: Apache-2.0
package landfall.cards.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import landfall.cards.entry.AngleEntry;
import landfall.cards.entry.NumberEntry;
import landfall.cards.entry.SpeedEntry;
import landfall.cards.entry.TurningEntry;
import landfall.cards.form.Kind;
import landfall.cards.form.Kinds;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import landfall.grind.CamCurve;
import landfall.material.Materials;
import landfall.material.WorkMaterial;
import landfall.quantity.Angle;
import landfall.tap.LimitMark;
import landfall.thread.CallOut;
import landfall.thread.callout.CallOuts;

/** The kinds that only cards have: call-outs, codes of the trade, cam tables, wheel marks. */
final class CardKinds {
    static final Kind<CallOut> CALL_OUT = new Kind<>(
            "a call-out: M8x1.25-6H, 1/4-20 UNC-2B",
            (text, bare) -> CallOuts.read(text),
            Kinds.ordered("type", "string", "description", "a call-out: M8x1.25-6H, 1/4-20 UNC-2B"));

    static final Kind<LimitMark> LIMIT_MARK = new Kind<>(
            "a marked limit: H3, L2, D5, class 2",
            (text, bare) -> limitMark(text),
            Kinds.ordered("type", "string", "description", "a marked limit: H3, L2, D5, class 2"));

    static final Kind<WorkMaterial> WORK_MATERIAL = new Kind<>(
            "a work material by one of its names: 4140 annealed, 304, EN AW-6061 T6",
            (text, bare) -> Materials.find("", text),
            Kinds.ordered("type", "string", "description", "a work material by one of its names"));

    /** A cam table: pairs of angle and share of the rise, parted by commas: {@code 0 deg 0, 30 deg 0.5, 60 deg 1}. */
    static final Kind<List<CamCurve.Point>> CAM_TABLE = new Kind<>(
            "pairs of angle and share of the rise: 0 deg 0, 30 deg 0.5, 60 deg 1",
            (text, bare) -> camTable(text),
            Kinds.ordered(
                    "type",
                    "array",
                    "items",
                    Kinds.ordered(
                            "type",
                            "object",
                            "properties",
                            Kinds.ordered(
                                    "angle",
                                    Map.of("type", List.of("string", "number")),
                                    "rise",
                                    Map.of("type", List.of("string", "number"))),
                            "required",
                            List.of("angle", "rise"),
                            "additionalProperties",
                            false)));

    /** Greatest speed marked on a wheel: in rev/min, or as a rim speed. */
    static final Kind<WheelMark> WHEEL_MARK = new Kind<>(
            "a greatest speed as marked: 4000 rev/min, 35 m/s",
            (text, bare) -> wheelMark(text),
            Kinds.ordered(
                    "type",
                    List.of("string", "number"),
                    "description",
                    "a greatest speed as marked: 4000 rev/min, 35 m/s"));

    private CardKinds() {}

    /** A choice among things that have a code on the card. */
    static <T> Kind<T> codes(T[] all, Function<T, String> code) {
        Map<String, T> meanings = new LinkedHashMap<>();
        for (T one : all) {
            meanings.put(code.apply(one), one);
        }
        return Kinds.choice(meanings);
    }

    private static Answer<LimitMark> limitMark(String text) {
        try {
            return LimitMark.read(text)
                    .map(Answer::of)
                    .orElseGet(() -> Answer.refused(new Finding(
                            "", text, "is no mark of a limit", "write H3, L2, D5 or class 2, or give limit.pitchMin")));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    private static Answer<WheelMark> wheelMark(String text) {
        Answer<WheelMark> speed = SpeedEntry.read(text).map(rim -> new WheelMark(null, rim));
        return speed instanceof Answer.Of
                ? speed
                : TurningEntry.read(text).map(turning -> new WheelMark(turning, null));
    }

    private static Answer<List<CamCurve.Point>> camTable(String text) {
        List<CamCurve.Point> points = new ArrayList<>();
        for (String pair : text.split(",")) {
            int blank = pair.strip().lastIndexOf(' ');
            if (blank < 0) {
                return Answer.refused(new Finding(
                        "", pair.strip(), "is not an angle and a rise", "write pairs: 0 deg 0, 30 deg 0.5, 60 deg 1"));
            }
            Answer<Angle> angle = AngleEntry.read(pair.strip().substring(0, blank));
            Answer<Double> rise = NumberEntry.read(pair.strip().substring(blank + 1));
            if (!angle.findings().isEmpty() || !rise.findings().isEmpty()) {
                return Answer.refused(angle.findings().isEmpty() ? rise.findings() : angle.findings());
            }
            points.add(new CamCurve.Point(angle.orThrow(), rise.orThrow()));
        }
        return Answer.of(points);
    }
}
