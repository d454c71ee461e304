// SPDX-License-Identifier: Apache-2.0
package landfall.history;

/**
 * What a tap has done.
 *
 * @param holes in its whole life
 * @param sinceSharp holes since it was last sharpened, or since it was new
 * @param about whether a guess is among the counts since it was last sharpened
 * @param sharpenings all ways together
 */
public record Uses(long holes, long sinceSharp, boolean about, int sharpenings) {
    static final Uses NONE = new Uses(0, 0, false, 0);

    Uses tapped(Happening.Holes more) {
        return new Uses(holes + more.count(), sinceSharp + more.count(), about || more.about(), sharpenings);
    }

    Uses sharpened() {
        return new Uses(holes, 0, false, sharpenings + 1);
    }
}
