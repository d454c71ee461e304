// SPDX-License-Identifier: Apache-2.0
package landfall.app.figure;

import java.util.List;

/**
 * A part of an answer under one title, in the order: words, limits, figures, tables, sentences.
 *
 * @param limits the paths of limits of size
 */
public record Section(String title, List<Fact> facts, List<String> limits, List<FigureView> figures, Listing listing) {
    /** A name and what is to be said of it. */
    public record Fact(String name, String text) {}

    /** What comes in rows and in lines. */
    public record Listing(List<TableView> tables, List<Lines> lines) {}

    /** Sentences under a name. */
    public record Lines(String name, List<String> sentences) {}
}
