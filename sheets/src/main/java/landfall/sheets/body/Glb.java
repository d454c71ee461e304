// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.body;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import landfall.solid.Mesh;
import landfall.solid.TapBody;

/**
 * A body as binary glTF 2.0: one mesh, places as floats in metres, triangles as 32-bit numbers, and an attribute of our
 * own, {@code _GAP}: the gap to the cut surface in millimetres, {@link #NO_GAP} where there is none.
 */
final class Glb {
    /** Stands for a place that is not on the chamfer. */
    static final float NO_GAP = -1000;

    private static final int HEADER = 12;
    private static final int CHUNK = 8;

    private Glb() {}

    static byte[] bytes(TapBody body) {
        Mesh mesh = body.mesh();
        int places = mesh.places();
        int binary = 12 * mesh.triangles() + 16 * places;
        byte[] json = padded(json(mesh));
        int length = HEADER + CHUNK + json.length + CHUNK + binary;
        ByteBuffer out = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
        out.putInt(0x46546C67).putInt(2).putInt(length);
        out.putInt(json.length).putInt(0x4E4F534A).put(json);
        out.putInt(binary).putInt(0x004E4942);
        for (int t = 0; t < mesh.triangles(); t++) {
            Mesh.Triangle triangle = mesh.triangle(t);
            out.putInt(triangle.a()).putInt(triangle.b()).putInt(triangle.c());
        }
        for (int i = 0; i < places; i++) {
            Corner corner = Corner.of(mesh.place(i));
            out.putFloat(corner.x() / 1000).putFloat(corner.y() / 1000).putFloat(corner.z() / 1000);
        }
        for (int i = 0; i < places; i++) {
            out.putFloat(body.gaps().at(i).map(gap -> (float) gap.mm()).orElse(NO_GAP));
        }
        return out.array();
    }

    private static byte[] padded(String json) {
        StringBuilder text = new StringBuilder(json);
        while (text.length() % 4 != 0) {
            text.append(' ');
        }
        return text.toString().getBytes(StandardCharsets.US_ASCII);
    }

    /** Least and greatest of the places, metres: x, y, z of the one, then of the other. */
    private static float[] room(Mesh mesh) {
        float[] room = {
            Float.MAX_VALUE, Float.MAX_VALUE, Float.MAX_VALUE, -Float.MAX_VALUE, -Float.MAX_VALUE, -Float.MAX_VALUE
        };
        for (int i = 0; i < mesh.places(); i++) {
            Corner corner = Corner.of(mesh.place(i));
            float[] at = {corner.x() / 1000, corner.y() / 1000, corner.z() / 1000};
            for (int k = 0; k < 3; k++) {
                room[k] = Math.min(room[k], at[k]);
                room[3 + k] = Math.max(room[3 + k], at[k]);
            }
        }
        return room;
    }

    private static String json(Mesh mesh) {
        int corners = 3 * mesh.triangles();
        int places = mesh.places();
        float[] room = room(mesh);
        return String.format(
                Locale.ROOT,
                "{\"asset\":{\"version\":\"2.0\"},\"scene\":0,\"scenes\":[{\"nodes\":[0]}],\"nodes\":[{\"mesh\":0}],"
                        + "\"meshes\":[{\"primitives\":[{\"attributes\":{\"POSITION\":1,\"_GAP\":2},\"indices\":0}]}],"
                        + "\"buffers\":[{\"byteLength\":%d}],\"bufferViews\":["
                        + "{\"buffer\":0,\"byteOffset\":0,\"byteLength\":%d,\"target\":34963},"
                        + "{\"buffer\":0,\"byteOffset\":%d,\"byteLength\":%d,\"target\":34962},"
                        + "{\"buffer\":0,\"byteOffset\":%d,\"byteLength\":%d,\"target\":34962}],\"accessors\":["
                        + "{\"bufferView\":0,\"componentType\":5125,\"count\":%d,\"type\":\"SCALAR\"},"
                        + "{\"bufferView\":1,\"componentType\":5126,\"count\":%d,\"type\":\"VEC3\","
                        + "\"min\":[%s,%s,%s],\"max\":[%s,%s,%s]},"
                        + "{\"bufferView\":2,\"componentType\":5126,\"count\":%d,\"type\":\"SCALAR\"}]}",
                4 * corners + 16 * places,
                4 * corners,
                4 * corners,
                12 * places,
                4 * corners + 12 * places,
                4 * places,
                corners,
                places,
                room[0],
                room[1],
                room[2],
                room[3],
                room[4],
                room[5],
                places);
    }
}
