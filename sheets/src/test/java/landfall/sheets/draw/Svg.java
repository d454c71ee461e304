// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads finished drawings back, as a browser would. */
public final class Svg {
    private static final Pattern PLACE = Pattern.compile("([-0-9.]+) ([-0-9.]+)(?=[A-Z]|$)");

    private Svg() {}

    public static Element parse(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            return factory.newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg)))
                    .getDocumentElement();
        } catch (Exception e) {
            throw new IllegalStateException("not well-formed: " + svg, e);
        }
    }

    /** The paths of a class, in order. */
    public static List<String> paths(Drawing drawing, String word) {
        List<String> paths = new ArrayList<>();
        NodeList all = parse(drawing.svg()).getElementsByTagName("path");
        for (int i = 0; i < all.getLength(); i++) {
            Element path = (Element) all.item(i);
            if (path.getAttribute("class").equals("lf-" + word)) {
                paths.add(path.getAttribute("d"));
            }
        }
        return paths;
    }

    /** The places that a path goes through: ends of lines and of arcs. */
    public static List<Spot> places(String path) {
        List<Spot> places = new ArrayList<>();
        Matcher matcher = PLACE.matcher(path);
        while (matcher.find()) {
            places.add(Spot.at(Double.parseDouble(matcher.group(1)), Double.parseDouble(matcher.group(2))));
        }
        return places;
    }
}
