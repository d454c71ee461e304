// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.body;

import landfall.solid.Mesh;

/** The parts of a 3MF file. */
final class ThreeMf {
    private static final String XML = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    static final String TYPES = XML
            + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
            + "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
            + "<Default Extension=\"model\" ContentType=\"application/vnd.ms-package.3dmanufacturing-3dmodel+xml\"/>"
            + "</Types>\n";
    static final String RELATIONS = XML
            + "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
            + "<Relationship Target=\"/3D/3dmodel.model\" Id=\"rel0\" "
            + "Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"/></Relationships>\n";

    private ThreeMf() {}

    static String model(Mesh mesh) {
        StringBuilder xml = new StringBuilder(XML)
                .append("<model unit=\"millimeter\" xml:lang=\"en\" ")
                .append("xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\">")
                .append("<resources><object id=\"1\" type=\"model\"><mesh><vertices>\n");
        for (int i = 0; i < mesh.places(); i++) {
            Corner corner = Corner.of(mesh.place(i));
            xml.append("<vertex x=\"").append(corner.x());
            xml.append("\" y=\"").append(corner.y());
            xml.append("\" z=\"").append(corner.z()).append("\"/>\n");
        }
        xml.append("</vertices><triangles>\n");
        for (int t = 0; t < mesh.triangles(); t++) {
            Mesh.Triangle triangle = mesh.triangle(t);
            xml.append("<triangle v1=\"").append(triangle.a());
            xml.append("\" v2=\"").append(triangle.b());
            xml.append("\" v3=\"").append(triangle.c()).append("\"/>\n");
        }
        return xml.append("</triangles></mesh></object></resources><build><item objectid=\"1\"/></build></model>\n")
                .toString();
    }
}
