// SPDX-License-Identifier: Apache-2.0
package landfall.cards.job;

import static landfall.cards.form.Field.needed;
import static landfall.cards.form.Field.optional;

import java.util.List;
import java.util.Locale;
import landfall.cards.ask.WorkKinds;
import landfall.cards.card.ShopCard;
import landfall.cards.card.TapFields;
import landfall.cards.crib.CribKinds;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kinds;
import landfall.cards.form.Quantities;
import landfall.cut.Driven.Drive;
import landfall.drill.Drill;
import landfall.history.Price;
import landfall.hole.HoleEnd;
import landfall.material.WorkMaterial;
import landfall.quantity.Length;
import landfall.thread.CallOut;

/** The fields of a job, and those of one line of its holes. */
public final class JobForms {
    static final Field<CallOut> CALLOUT = told(needed("callout", TapFields.THREAD.kind(), "M8x1.25-6H"));
    static final Field<WorkMaterial> MATERIAL = told(needed("material", TapFields.CUTS.kind(), "C45"));
    static final Field<Length> DEPTH = told(needed("depth", Quantities.length(0.05, 2000), "16 mm"));
    static final Field<HoleEnd> KIND = told(needed("kind", CribKinds.words(HoleEnd.values(), HoleEnd::code), "blind"));
    static final Field<Integer> COUNT = told(needed("count", Kinds.count(1, 100_000), "4"));
    static final Field<String> LABEL = told(optional("label", Kinds.TEXT, "A"));
    static final Field<String> NOTE = told(optional("note", Kinds.TEXT, "from the far side"));

    static final Field<String> NAME = told(optional("name", Kinds.TEXT, "Bearing block"));
    static final Field<Drive> DRIVE = told(optional("drive", CribKinds.words(Drive.values(), JobForms::code), "mill"));
    static final Field<List<Drill>> DRILLS = told(optional("drills", WorkKinds.DRILLS, "number, letter, fraction"));
    static final Field<List<String>> GAUGES = told(optional("gauges", ShopCard.GAUGES.kind(), "M8x1.25-6H plug"));
    static final Field<Price> HOUR = told(optional("hour", CribKinds.PRICE, "60 USD"));
    static final Field<Price> TAP_PRICE = told(optional("tap-price", CribKinds.PRICE, "18 USD"));
    static final Field<Price> SPOILT = told(optional("spoilt", CribKinds.PRICE, "40 USD"));
    static final Field<Integer> SHARPENINGS = told(optional("sharpenings", Kinds.count(0, 60), "5"));

    /** One line of the holes. */
    public static final Form HOLE = Form.of("job-hole", CALLOUT, MATERIAL, DEPTH, KIND, COUNT, LABEL, NOTE);

    /** The job itself. */
    public static final Form JOB = Form.of("job", NAME, DRIVE, DRILLS, GAUGES, HOUR, TAP_PRICE, SPOILT, SHARPENINGS);

    private JobForms() {}

    private static String code(Drive drive) {
        return drive.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static <T> Field<T> told(Field<T> field) {
        return field.worded("job." + field.path());
    }
}
