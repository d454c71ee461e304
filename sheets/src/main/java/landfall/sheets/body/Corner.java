// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.body;

import landfall.solid.Mesh;

/** A corner of a triangle, or a direction, in the precision of the files; mm. */
record Corner(float x, float y, float z) {
    static Corner of(Mesh.Spot spot) {
        return new Corner(
                (float) spot.x().mm(), (float) spot.y().mm(), (float) spot.z().mm());
    }

    /** Square to the triangle of this corner and two more, of length 1; nil for a triangle without area. */
    Corner normal(Corner b, Corner c) {
        double ux = b.x - x;
        double uy = b.y - y;
        double uz = b.z - z;
        double vx = c.x - x;
        double vy = c.y - y;
        double vz = c.z - z;
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
        return length == 0
                ? new Corner(0, 0, 0)
                : new Corner((float) (nx / length), (float) (ny / length), (float) (nz / length));
    }
}
