// SPDX-License-Identifier: Apache-2.0
package landfall.app.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import landfall.cards.words.Words;
import org.jspecify.annotations.Nullable;

/**
 * The line of places above a page, each of which takes the subject on, and the subject in words.
 *
 * @param here the place that the page is, none for a page of trouble
 * @param with what the page's own form must bring along in {@link Subject#WITH}; empty for nothing
 * @param bare the page without its subject
 */
public record Trail(Subject subject, @Nullable Place here, String with, String bare) {
    /** A trail that carries nothing. */
    static Trail bare(@Nullable Place here) {
        return new Trail(new Subject(Map.of(), Map.of()), here, "", "/");
    }

    public String to(Place place) {
        if (place == Place.WHAT_IF) {
            return subject.withoutOffers().manyAt(here);
        }
        return place == here ? subject.withoutOffers().at(place) : subject.at(place);
    }

    public String mark() {
        return subject.text(Subject.CRIB);
    }

    /** The subject in a few words, most telling first. */
    public List<String> words() {
        List<String> words = new ArrayList<>();
        add(words, subject.text("thread"));
        add(words, subject.text("cuts"));
        add(words, subject.text("depth"));
        if (yes("blind")) {
            words.add(Words.of("page.trail.blind"));
        } else if (yes("through")) {
            words.add(Words.of("page.trail.through"));
        }
        if (!subject.text("hole").isEmpty()) {
            words.add(Words.of("page.trail.hole", subject.text("hole")));
        }
        if (!subject.text("flutes.count").isEmpty()) {
            words.add(Words.of("page.trail.flutes", subject.text("flutes.count")));
        }
        return words;
    }

    private boolean yes(String path) {
        return subject.text(path).equalsIgnoreCase("yes");
    }

    private static void add(List<String> words, String text) {
        if (!text.isEmpty()) {
            words.add(text);
        }
    }
}
