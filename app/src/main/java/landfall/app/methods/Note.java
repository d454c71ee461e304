// SPDX-License-Identifier: Apache-2.0
package landfall.app.methods;

import java.util.List;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * A method note.
 *
 * @param name of its file, without the ending
 * @param title its first heading
 */
public record Note(String name, String title, String markdown) {
    private static final List<Extension> TABLES = List.of(TablesExtension.create());

    static Note of(String name, String markdown) {
        String title = markdown.lines()
                .filter(line -> line.startsWith("# "))
                .map(line -> line.substring(2).strip())
                .findFirst()
                .orElse(name);
        return new Note(name, title, markdown);
    }

    /** As a page shows it; raw HTML in a note is shown as text. */
    public String html() {
        Node document = Parser.builder().extensions(TABLES).build().parse(markdown);
        return HtmlRenderer.builder()
                .extensions(TABLES)
                .escapeHtml(true)
                .sanitizeUrls(true)
                .build()
                .render(document);
    }
}
