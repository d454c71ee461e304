// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.body;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import landfall.solid.Mesh;
import landfall.solid.TapBody;

/** The files that a body is written to; all in millimetres but glTF, whose unit is the metre. */
public enum BodyFormat {
    /** Binary STL: triangles with their normals and nothing else. */
    STL("stl", "model/stl") {
        @Override
        public void write(TapBody body, OutputStream out) throws IOException {
            Mesh mesh = body.mesh();
            ByteBuffer bytes = ByteBuffer.allocate(84 + 50 * mesh.triangles()).order(ByteOrder.LITTLE_ENDIAN);
            bytes.put("tap body, mm".getBytes(StandardCharsets.US_ASCII)).position(80);
            bytes.putInt(mesh.triangles());
            for (int t = 0; t < mesh.triangles(); t++) {
                Mesh.Triangle triangle = mesh.triangle(t);
                Corner a = Corner.of(mesh.place(triangle.a()));
                Corner b = Corner.of(mesh.place(triangle.b()));
                Corner c = Corner.of(mesh.place(triangle.c()));
                for (Corner corner : new Corner[] {a.normal(b, c), a, b, c}) {
                    bytes.putFloat(corner.x()).putFloat(corner.y()).putFloat(corner.z());
                }
                bytes.putShort((short) 0);
            }
            out.write(bytes.array());
        }
    },

    /** 3MF core: a zip with the model as XML. */
    THREE_MF("3mf", "model/3mf") {
        @Override
        public void write(TapBody body, OutputStream out) throws IOException {
            ZipOutputStream zip = new ZipOutputStream(out);
            entry(zip, "[Content_Types].xml", ThreeMf.TYPES);
            entry(zip, "_rels/.rels", ThreeMf.RELATIONS);
            entry(zip, "3D/3dmodel.model", ThreeMf.model(body.mesh()));
            zip.finish();
        }
    },

    /** Binary glTF 2.0, the gap to the cut surface with every place. */
    GLB("glb", "model/gltf-binary") {
        @Override
        public void write(TapBody body, OutputStream out) throws IOException {
            out.write(Glb.bytes(body));
        }
    };

    private final String ending;
    private final String type;

    BodyFormat(String ending, String type) {
        this.ending = ending;
        this.type = type;
    }

    public abstract void write(TapBody body, OutputStream out) throws IOException;

    /** How such a file's name ends. */
    public String ending() {
        return ending;
    }

    /** Its media type. */
    public String type() {
        return type;
    }

    /** The format that a file's name asks for. */
    public static Optional<BodyFormat> of(String name) {
        String small = name.toLowerCase(Locale.ROOT);
        for (BodyFormat format : values()) {
            if (small.endsWith("." + format.ending)) {
                return Optional.of(format);
            }
        }
        return Optional.empty();
    }

    private static void entry(ZipOutputStream zip, String name, String text) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        // no clock: the same body gives the same bytes
        entry.setTime(0);
        zip.putNextEntry(entry);
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }
}
