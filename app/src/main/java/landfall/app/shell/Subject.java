// SPDX-License-Identifier: Apache-2.0
package landfall.app.shell;

import io.javalin.http.Context;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import landfall.cards.form.Form;
import org.jspecify.annotations.Nullable;

/**
 * What a person is busy with: the thread, the hole, the tap, as far as it was told on the pages that were open before.
 * It goes from page to page in their addresses: fields that a page asks for by themselves, the others packed into one,
 * {@code with}, so that nothing is lost on a page that does not ask for it.
 *
 * @param offered what the page found out for those that come next, and which goes no further: the drill for a hole
 * @param fields by their paths on the card of a tap, where it has them: what it is to cut is {@code cuts}, what it is
 *     made of {@code material}
 */
public record Subject(Map<String, String> fields, Map<String, String> offered) {
    /** The part of an address that holds what the page itself does not ask for. */
    public static final String WITH = "with";
    /** The mark of a tap of the crib. */
    public static final String CRIB = "crib";

    private static final String MATERIAL = "material";
    private static final String CUTS = "cuts";
    private static final String THREAD = "thread";
    private static final String CALL_OUT = "callout";
    private static final String FLUTES = "flutes.count";
    /** Their {@code material} is what is tapped. */
    private static final Set<Place> ASK_FOR_WORK = EnumSet.of(Place.HOLE, Place.TAP, Place.WHY);

    /** Places whose question can be asked of many set-ups. */
    private static final Set<Place> VARIED = EnumSet.of(Place.GRIND, Place.CUT, Place.HOLE, Place.GAUGE);

    private static final String QUESTION = "question";
    private static final int LONGEST = 8000;
    private static final Set<String> KNOWN = known();

    public Subject {
        fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
        offered = Map.copyOf(offered);
    }

    private static Set<String> known() {
        Set<String> all = new HashSet<>(Set.of(CRIB));
        for (Place place : Place.values()) {
            place.form().ifPresent(form -> all.addAll(form.paths()));
        }
        all.remove(CALL_OUT);
        return all;
    }

    /**
     * What a request tells.
     *
     * @param found what its page knows besides, such as the card of a tap
     */
    public static Subject of(Context ctx, Map<String, String> found, Map<String, String> offered) {
        Map<String, String> fields = new LinkedHashMap<>();
        told(ctx)
                .ifPresent(place -> ctx.queryParamMap()
                        .forEach(
                                (path, texts) -> put(fields, known(place, path), texts.isEmpty() ? "" : texts.get(0))));
        found.forEach((path, text) -> put(fields, path, text));
        unpacked(Optional.ofNullable(ctx.queryParam(WITH)).orElse("")).forEach((path, text) -> put(fields, path, text));
        return new Subject(fields, offered);
    }

    /** The place whose fields a request has: the page's own, or that of the question which many set-ups are asked. */
    private static Optional<Place> told(Context ctx) {
        if (!ctx.path().equals(Place.WHAT_IF.path())) {
            return Place.askingAt(ctx.path());
        }
        String noun = Optional.ofNullable(ctx.queryParam(QUESTION)).orElse("");
        return Stream.of(Place.values())
                .filter(place -> !noun.isEmpty() && place.question().equals(noun))
                .findFirst();
    }

    /** Many set-ups of the question that a page asks, with all its fields; of none where it asks another. */
    String manyAt(@Nullable Place here) {
        if (here == null || !VARIED.contains(here)) {
            return at(Place.WHAT_IF);
        }
        Map<String, String> rest = new LinkedHashMap<>(fields);
        Map<String, String> all = new LinkedHashMap<>();
        all.put(QUESTION, here.question());
        here.form()
                .ifPresent(form ->
                        fields.forEach((path, text) -> name(here, form, path).ifPresent(name -> {
                            all.put(name, text);
                            rest.remove(path);
                        })));
        return Typed.address(Place.WHAT_IF.path(), packed(all, rest));
    }

    /** What a field of a page is called on a tap's card. */
    private static String known(Place place, String path) {
        if (path.equals(MATERIAL) && ASK_FOR_WORK.contains(place)) {
            return CUTS;
        }
        return path.equals(CALL_OUT) ? THREAD : path;
    }

    private static void put(Map<String, String> fields, String path, String text) {
        if (KNOWN.contains(path) && !text.isBlank()) {
            fields.putIfAbsent(path, text.strip());
        }
    }

    /** The same for the page itself. */
    Subject withoutOffers() {
        return new Subject(fields, Map.of());
    }

    public boolean isEmpty() {
        return fields.isEmpty();
    }

    public String text(String path) {
        return fields.getOrDefault(path, "");
    }

    /** The address of a place with all of it. */
    public String at(Place place) {
        Map<String, String> rest = new LinkedHashMap<>(fields);
        if (place == Place.CRIB && fields.containsKey(CRIB)) {
            rest.remove(CRIB);
            return Typed.address(place.path() + "/" + fields.get(CRIB), packed(new LinkedHashMap<>(), rest));
        }
        Map<String, String> own = new LinkedHashMap<>();
        place.form()
                .ifPresent(form ->
                        fields.forEach((path, text) -> name(place, form, path).ifPresent(name -> {
                            own.put(name, text);
                            rest.remove(path);
                        })));
        place.form()
                .ifPresent(form -> offered.forEach(
                        (path, text) -> name(place, form, path).ifPresent(name -> own.putIfAbsent(name, text))));
        return Typed.address(place.path(), packed(own, rest));
    }

    /** What a place calls a field; nothing where it does not ask for it. */
    private Optional<String> name(Place place, Form form, String path) {
        boolean asksForWork = ASK_FOR_WORK.contains(place);
        if (asksForWork && path.equals(MATERIAL)) {
            return Optional.empty();
        }
        String name = asksForWork && path.equals(CUTS) ? MATERIAL : path;
        if (place == Place.WHY && path.equals(THREAD) && !fields.containsKey(FLUTES)) {
            name = CALL_OUT;
        }
        return form.field(name).isPresent() ? Optional.of(name) : Optional.empty();
    }

    private static Map<String, String> packed(Map<String, String> own, Map<String, String> rest) {
        StringBuilder text = new StringBuilder();
        rest.forEach((path, value) -> text.append(text.isEmpty() ? "" : ";")
                .append(path)
                .append(':')
                .append(value.replace("\\", "\\\\").replace(";", "\\;")));
        if (!text.isEmpty() && text.length() <= LONGEST) {
            own.put(WITH, text.toString());
        }
        return own;
    }

    /** Pairs {@code path:text} with semicolons between; what is not one is passed over. */
    private static Map<String, String> unpacked(String with) {
        Map<String, String> fields = new LinkedHashMap<>();
        if (with.length() > LONGEST) {
            return fields;
        }
        for (String pair : with.split("(?<!\\\\);")) {
            int colon = pair.indexOf(':');
            if (colon > 0) {
                fields.put(
                        pair.substring(0, colon),
                        pair.substring(colon + 1).replace("\\;", ";").replace("\\\\", "\\"));
            }
        }
        return fields;
    }
}
