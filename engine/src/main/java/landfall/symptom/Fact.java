// SPDX-License-Identifier: Apache-2.0
package landfall.symptom;

/**
 * What this tap, hole or material says about a cause.
 *
 * @param weight up, down or neither
 * @param words in a sentence
 */
record Fact(Weight weight, String words) {
    enum Weight {
        UP,
        DOWN,
        NEITHER
    }

    static Fact up(String words) {
        return new Fact(Weight.UP, words);
    }

    static Fact down(String words) {
        return new Fact(Weight.DOWN, words);
    }

    static Fact plain(String words) {
        return new Fact(Weight.NEITHER, words);
    }

    Likelihood moved(Likelihood before) {
        return switch (weight) {
            case UP -> before.up();
            case DOWN -> before.down();
            case NEITHER -> before;
        };
    }
}
