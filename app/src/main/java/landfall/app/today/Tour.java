// SPDX-License-Identifier: Apache-2.0
package landfall.app.today;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import landfall.app.example.Examples;
import landfall.app.shell.Typed;
import landfall.cards.words.Words;

/** Three steps round the job with what the invented shop has: a hole, the tap in it, the tap sharpened. */
public record Tour(List<Step> steps) {
    /** One step and the page where it is taken. */
    public record Step(String words, String address) {}

    static Tour ofTheInventedShop() {
        return new Tour(List.of(
                new Step(
                        Words.of("page.tour.hole"),
                        Typed.address(
                                "/hole",
                                Map.of("thread", "1/2-13 UNC-2B", "material", "1045", "depth", ".75", "blind", "yes"))),
                new Step(Words.of("page.tour.tap"), cut()),
                new Step(Words.of("page.tour.grind"), Examples.all().get(0).address())));
    }

    /** The worn tap of the same thread in that hole. */
    private static String cut() {
        Map<String, String> card = new TreeMap<>(Examples.all().get(0).tap());
        card.putAll(Map.of("cuts", "1045", "hole", "27/64", "depth", ".75", "blind", "yes", "wear", "due"));
        return Typed.address("/cut", card);
    }
}
