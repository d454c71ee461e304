// SPDX-License-Identifier: Apache-2.0
package landfall.cards.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Nearest;
import landfall.fault.Finding;

/**
 * A file that was given as a card of one kind. It may hold the fields of that card and no others, so that a tap never
 * comes out of a fixture's file.
 *
 * @param fields those that belong to the card
 * @param findings what is wrong with the file, all at once
 * @param isLost whether nothing in the file could be used: broken, or a card of another kind
 */
public record CardFile(Map<String, String> fields, List<Finding> findings, boolean isLost) {
    private static final List<Form> KINDS = List.of(TapCard.FORM, FixtureCard.FORM, ShopCard.FORM);

    /**
     * Reads a file's text.
     *
     * @param place what the file is called where it was given: {@code card}, {@code fixture}
     * @param name of the file
     */
    public static CardFile read(Form form, String place, String name, String json) {
        Flat.Told told = Flat.told(json, form);
        if (!told.whole()) {
            Finding broken = told.findings().get(0);
            String given = broken.given().isEmpty() ? name : name + ", " + broken.given();
            return lost(new Finding(place, given, broken.why(), broken.mend()));
        }
        Optional<Form> other = KINDS.stream()
                .filter(kind -> !kind.name().equals(form.name()) && isOf(kind, told) && !isOf(form, told))
                .findFirst();
        if (other.isPresent()) {
            return lost(new Finding(
                    place,
                    name,
                    "holds a %s, not a %s".formatted(words(other.get()), words(form)),
                    "give the file of a %s here, and look whether two files are swapped".formatted(words(form))));
        }
        Map<String, String> fields = new LinkedHashMap<>();
        List<Finding> findings = new ArrayList<>(told.findings());
        told.fields().forEach((path, text) -> {
            if (form.field(path).isPresent()) {
                fields.put(path, text);
            } else {
                findings.add(stranger(form, path, text));
            }
        });
        return new CardFile(fields, findings, false);
    }

    private static CardFile lost(Finding finding) {
        return new CardFile(Map.of(), List.of(finding), true);
    }

    /** Whether a field that a card of this kind must have was told, well or badly. */
    private static boolean isOf(Form form, Flat.Told told) {
        return form.fields().stream()
                .filter(form.name().equals(ShopCard.FORM.name()) ? CardFile::isOfShopOnly : Field::required)
                .map(Field::path)
                .anyMatch(path -> told.fields().containsKey(path)
                        || told.findings().stream()
                                .anyMatch(finding -> finding.field().equals(path)));
    }

    private static boolean isOfShopOnly(Field<?> field) {
        return TapCard.FORM.field(field.path()).isEmpty()
                && FixtureCard.FORM.field(field.path()).isEmpty();
    }

    private static Finding stranger(Form form, String path, String text) {
        String why = "is not a field of the " + words(form);
        return KINDS.stream()
                .filter(kind -> kind.field(path).isPresent())
                .findFirst()
                .map(kind -> new Finding(
                        path,
                        text,
                        why + " but of a " + words(kind),
                        "move it to the %s, or leave it out".formatted(words(kind))))
                .orElseGet(() -> new Finding(
                        path, text, why, "write " + Nearest.of(path, form.paths()) + ", the nearest, or leave it out"));
    }

    private static String words(Form form) {
        return form.name().replace('-', ' ');
    }
}
