// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

/**
 * The same envelope found by search, for tests: every degree of the spindle is looked at, and every bracket of the scan
 * narrowed by the golden section. It knows nothing of pieces, corners or slopes.
 *
 * <p>In the plane the wheel is the ellipse (x − C)²·cos²κ + (y − h)² = R_w², with C = r + R_w/cos κ − share·rise. A ray
 * at azimuth ψ = θ − φ meets it at the smaller root of a quadratic.
 */
final class SectionScan {
    /** Steps of the scan over the spindle; finer than any lobe's corner matters after refinement. */
    private static final int SCAN = 360;

    private static final int REFINE = 26;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final double STEP = 2 * Math.PI / SCAN;

    private final CamMotion cam;
    private final double squash;
    private final double wheelSquare;
    private final double height;
    private final double rise;
    private final double far;
    private final double window;
    private final double[] centres = new double[SCAN];

    /** @param radius of the chamfer line on the centre line in this plane, cam at rest, mm */
    SectionScan(WheelPass pass, CamMotion cam, double radius) {
        this(pass, cam, radius, 0);
    }

    /** @param drop what the wheel's radius lacks in this plane of that of a true cylinder, mm */
    SectionScan(WheelPass pass, CamMotion cam, double radius, double drop) {
        double cosine = Math.cos(pass.swivel().rad());
        this.cam = cam;
        this.squash = cosine * cosine;
        double whole = pass.radius().mm();
        this.wheelSquare = (whole - drop) * (whole - drop);
        this.height = pass.aboveCentre().mm();
        this.rise = pass.rise().mm();
        double foot = Math.sqrt(Math.max(0, whole * whole - height * height)) / cosine;
        this.far = radius + foot;
        this.window = window(radius + Math.abs(drop) / cosine);
        for (int i = 0; i < SCAN; i++) {
            centres[i] = far - cam.share(i * STEP) * rise;
        }
    }

    /** Azimuth beyond which the wheel at full rise cannot reach below the starting radius, and some room. */
    private double window(double radius) {
        double low = Math.max(-0.99, (radius - rise) / radius);
        return Math.min(Math.PI / 2 - 0.01, Math.acos(Math.min(1, low)) + 0.3);
    }

    /** Least radius at land angle theta, mm. */
    double radius(double theta) {
        return deepest(theta)[0];
    }

    /** Least radius, and the spindle angle at which it was reached. */
    double[] deepest(double theta) {
        int from = (int) Math.floor((theta - window) / STEP);
        int to = (int) Math.ceil((theta + window) / STEP);
        double before = scanned(theta, from - 1);
        double here = scanned(theta, from);
        double best = Double.POSITIVE_INFINITY;
        double at = theta;
        for (int i = from; i <= to; i++) {
            double after = scanned(theta, i + 1);
            if (here <= before && here <= after && here < best + rise * STEP) {
                double phi = refine(theta, (i - 1) * STEP, (i + 1) * STEP);
                double value = ray(theta - phi, far - cam.share(phi) * rise);
                if (value < best) {
                    best = value;
                    at = phi;
                }
            }
            before = here;
            here = after;
        }
        return new double[] {best, at};
    }

    private double scanned(double theta, int i) {
        return ray(theta - i * STEP, centres[Math.floorMod(i, SCAN)]);
    }

    private double refine(double theta, double low, double high) {
        double a = low;
        double b = high;
        double x1 = b - GOLDEN * (b - a);
        double x2 = a + GOLDEN * (b - a);
        double f1 = at(theta, x1);
        double f2 = at(theta, x2);
        for (int i = 0; i < REFINE; i++) {
            if (f1 < f2) {
                b = x2;
                x2 = x1;
                f2 = f1;
                x1 = b - GOLDEN * (b - a);
                f1 = at(theta, x1);
            } else {
                a = x1;
                x1 = x2;
                f1 = f2;
                x2 = a + GOLDEN * (b - a);
                f2 = at(theta, x2);
            }
        }
        return f1 < f2 ? x1 : x2;
    }

    /** Radius that the wheel leaves at theta with the spindle at phi. */
    double at(double theta, double phi) {
        return ray(theta - phi, far - cam.share(phi) * rise);
    }

    /**
     * Radius at which the ray of azimuth psi enters the wheel whose centre is at {@code centre}; infinite when it
     * misses.
     */
    private double ray(double psi, double centre) {
        double cosine = Math.cos(psi);
        if (cosine <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double sine = Math.sin(psi);
        double a = squash * cosine * cosine + sine * sine;
        double b = squash * centre * cosine + height * sine;
        double c = squash * centre * centre + height * height - wheelSquare;
        double root = b * b - a * c;
        return root < 0 ? Double.POSITIVE_INFINITY : (b - Math.sqrt(root)) / a;
    }
}
