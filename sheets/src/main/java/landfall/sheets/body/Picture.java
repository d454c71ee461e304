// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.body;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Locale;
import javax.imageio.ImageIO;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.solid.Mesh;
import landfall.solid.TapBody;

/**
 * A still picture of a body: its point to the left, seen square to the axis and a little from the front, nearest
 * surface wins. Metal in greys by the light; the chamfer in steps of one ink by its gap to the cut surface.
 */
public final class Picture {
    private static final int WIDTH = 960;
    private static final int HEIGHT = 420;
    private static final int MARGIN = 16;
    private static final int PAPER = 0xFAF8F2;
    private static final double TILT = Math.toRadians(24);
    private static final double[] LIGHT = {-0.35, 0.55, 0.76};
    private static final int INK = 0x1F3A5F;

    private final Mesh mesh;
    private final TapBody body;
    private final double scale;
    private final double left;
    private final double turn;
    private final float[] depth = new float[WIDTH * HEIGHT];
    private final int[] colours = new int[WIDTH * HEIGHT];

    private Picture(TapBody body, Length shown, Angle turn) {
        this.body = body;
        this.mesh = body.mesh();
        this.turn = turn.rad();
        double across = 0;
        for (int i = 0; i < mesh.places(); i++) {
            across = Math.max(
                    across, Math.hypot(mesh.place(i).x().mm(), mesh.place(i).y().mm()));
        }
        double high = 2 * across * 1.02;
        double wide = shown.mm() * Math.cos(TILT) + 2 * across * Math.sin(TILT);
        this.scale = Math.min((WIDTH - 2.0 * MARGIN) / wide, (HEIGHT - 2.0 * MARGIN) / high);
        this.left = MARGIN + across * Math.sin(TILT) * scale;
        Arrays.fill(depth, Float.NEGATIVE_INFINITY);
        Arrays.fill(colours, PAPER);
    }

    /**
     * PNG of a body.
     *
     * @param shown length from the point that has to be in the picture; more is where there is room
     * @param turn of the tap about its axis
     */
    public static byte[] png(TapBody body, Length shown, Angle turn) {
        Picture picture = new Picture(body, shown, turn);
        picture.draw();
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, WIDTH, HEIGHT, picture.colours, 0, WIDTH);
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            ImageIO.write(image, "png", out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Place in the picture: pixels right and down, nearness. */
    private double[] seen(int place) {
        Mesh.Spot spot = mesh.place(place);
        double x = spot.x().mm() * Math.cos(turn) - spot.y().mm() * Math.sin(turn);
        double y = spot.x().mm() * Math.sin(turn) + spot.y().mm() * Math.cos(turn);
        double z = spot.z().mm();
        // z runs right, x comes near, y up; then the point is turned towards the eye
        double right = z * Math.cos(TILT) - x * Math.sin(TILT);
        double near = -z * Math.sin(TILT) + x * Math.cos(TILT) * -1;
        return new double[] {left + right * scale, HEIGHT / 2.0 - y * scale, near, right, y};
    }

    private void draw() {
        double[][] all = new double[mesh.places()][];
        int[] steps = new int[mesh.places()];
        for (int i = 0; i < all.length; i++) {
            all[i] = seen(i);
            steps[i] = body.gaps().at(i).map(GapSteps::of).orElse(-1);
        }
        for (int t = 0; t < mesh.triangles(); t++) {
            Mesh.Triangle triangle = mesh.triangle(t);
            int step = Math.min(steps[triangle.a()], Math.min(steps[triangle.b()], steps[triangle.c()]));
            fill(all[triangle.a()], all[triangle.b()], all[triangle.c()], step);
        }
    }

    private void fill(double[] a, double[] b, double[] c, int step) {
        double area = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
        if (area == 0) {
            return;
        }
        int colour = colour(a, b, c, step);
        int top = (int) Math.max(0, Math.ceil(Math.min(a[1], Math.min(b[1], c[1]))));
        int bottom = (int) Math.min(HEIGHT - 1, Math.floor(Math.max(a[1], Math.max(b[1], c[1]))));
        int from = (int) Math.max(0, Math.ceil(Math.min(a[0], Math.min(b[0], c[0]))));
        int to = (int) Math.min(WIDTH - 1, Math.floor(Math.max(a[0], Math.max(b[0], c[0]))));
        for (int y = top; y <= bottom; y++) {
            for (int x = from; x <= to; x++) {
                double v = ((x - a[0]) * (c[1] - a[1]) - (y - a[1]) * (c[0] - a[0])) / area;
                double w = ((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])) / area;
                if (v >= 0 && w >= 0 && v + w <= 1) {
                    float near = (float) (a[2] + v * (b[2] - a[2]) + w * (c[2] - a[2]));
                    int pixel = y * WIDTH + x;
                    if (near > depth[pixel]) {
                        depth[pixel] = near;
                        colours[pixel] = colour;
                    }
                }
            }
        }
    }

    private static int colour(double[] a, double[] b, double[] c, int step) {
        double[] u = {b[3] - a[3], b[4] - a[4], b[2] - a[2]};
        double[] v = {c[3] - a[3], c[4] - a[4], c[2] - a[2]};
        double[] n = {u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]};
        double length = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
        double dot = length == 0 ? 0 : (n[0] * LIGHT[0] + n[1] * LIGHT[1] + n[2] * LIGHT[2]) / length;
        double light = 0.35 + 0.65 * Math.abs(dot);
        if (step < 0) {
            int grey = (int) Math.round(60 + 160 * light);
            return grey << 16 | grey << 8 | grey;
        }
        double paper = GapSteps.tone(step);
        int red = mixed(INK >> 16 & 0xFF, paper, light);
        int green = mixed(INK >> 8 & 0xFF, paper, light);
        int blue = mixed(INK & 0xFF, paper, light);
        return red << 16 | green << 8 | blue;
    }

    /** The flat colour of a step of the chamfer, as a style sheet writes it. */
    public static String ink(int step) {
        double paper = GapSteps.tone(step);
        return String.format(
                Locale.ROOT,
                "#%02x%02x%02x",
                mixed(INK >> 16 & 0xFF, paper, 1),
                mixed(INK >> 8 & 0xFF, paper, 1),
                mixed(INK & 0xFF, paper, 1));
    }

    private static int mixed(int ink, double paper, double light) {
        return (int) Math.round((ink + (255 - ink) * paper) * (0.75 + 0.25 * light));
    }
}
