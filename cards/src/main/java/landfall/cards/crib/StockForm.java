// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import static landfall.cards.form.Field.optional;

import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Quantities;
import landfall.history.Price;

/** What may be told to see what to buy and what sharpening saved. */
public final class StockForm {
    static final Field<Double> DELIVERY = said(optional("delivery", Quantities.number(0.1, 200), "2"));
    static final Field<Double> UNTIL = said(optional("until", Quantities.number(0, 200), "4"));
    static final Field<Double> RISK = said(optional("risk", Quantities.SHARE, "5 %"));
    static final Field<Price> SHARPENING = said(optional("sharpening", CribKinds.PRICE, "6 EUR"));

    public static final Form FORM = Form.of("stock", DELIVERY, UNTIL, RISK, SHARPENING);

    private StockForm() {}

    private static <T> Field<T> said(Field<T> field) {
        return field.worded("stock." + field.path());
    }
}
