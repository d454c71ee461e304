// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import static landfall.cards.form.Field.optional;

import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kinds;
import landfall.cards.form.Quantities;
import landfall.history.Price;
import landfall.quantity.Length;

/** What may be told beside a tap's records to see what is ahead of it. */
public final class ProspectForm {
    static final Field<Integer> HOLES = said(optional("holes", Kinds.count(1, 10_000_000), "120"));
    static final Field<Length> DEPTH = said(optional("depth", Quantities.length(0.1, 1000), "16 mm"));
    static final Field<Price> PRICE = said(optional("price", CribKinds.PRICE, "24.50 EUR"));
    static final Field<Price> SHARPENING = said(optional("sharpening", CribKinds.PRICE, "6 EUR"));
    static final Field<Price> SPOILT = said(optional("spoilt", CribKinds.PRICE, "80 EUR"));
    static final Field<Boolean> MISSED = said(optional("missed", Kinds.YES_NO, "yes"));

    public static final Form FORM = Form.of("prospect", HOLES, DEPTH, PRICE, SHARPENING, SPOILT, MISSED);

    private ProspectForm() {}

    private static <T> Field<T> said(Field<T> field) {
        return field.worded("prospect." + field.path());
    }
}
