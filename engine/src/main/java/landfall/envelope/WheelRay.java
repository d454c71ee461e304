// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

/**
 * A ray from the tap's axis to the wheel in a plane square to the axis, where the wheel is the ellipse (x − C)²·cos²κ_s
 * + (y − h)² = R_w².
 *
 * <p>Holds what the last cast found, so that the inner loop makes no objects.
 */
final class WheelRay {
    /** Azimuths closer than this are alike: the radius there differs by less than a picometre. */
    private static final double CLOSE = 1e-9;

    private final double squash;
    private final double wheelSquare;
    private final double height;

    /** Radius at which the ray enters the wheel, mm; infinite when it misses. */
    double radius;

    /** Its change with the azimuth, mm per radian. */
    double byAzimuth;

    /** Its change with the distance of the wheel's centre. */
    double byCentre;

    /**
     * @param squash cos²κ_s
     * @param wheel radius of the wheel in this plane, mm
     * @param height of the wheel's centre over the axis, mm
     */
    WheelRay(double squash, double wheel, double height) {
        this.squash = squash;
        this.wheelSquare = wheel * wheel;
        this.height = height;
    }

    /** @param psi azimuth from the centre line, radians; {@code centre} is C, mm */
    void cast(double psi, double centre) {
        double cosine = Math.cos(psi);
        double sine = Math.sin(psi);
        double a = squash * cosine * cosine + sine * sine;
        double b = squash * centre * cosine + height * sine;
        double c = squash * centre * centre + height * height - wheelSquare;
        double root = b * b - a * c;
        if (root <= 0 || cosine <= 0) {
            radius = Double.POSITIVE_INFINITY;
            return;
        }
        double q = Math.sqrt(root);
        radius = (b - q) / a;
        byAzimuth = radius * (sine * cosine * (1 - squash) * radius + squash * centre * sine - height * cosine) / q;
        byCentre = squash * (centre - radius * cosine) / q;
    }

    boolean misses() {
        return radius == Double.POSITIVE_INFINITY;
    }

    /**
     * Azimuth at which the wheel, its centre moving by {@code slope} per radian of turn, leaves its deepest mark: where
     * the change of the radius with the turn, slope·∂ρ/∂C − ∂ρ/∂ψ, is nil. It falls with the azimuth; secants, halved
     * where they would leave the bracket.
     *
     * @param window the azimuth lies within ± this
     * @param guess where to begin
     */
    double deepest(double centre, double slope, double window, double guess) {
        double low = -window;
        double high = window;
        double before = guess + 1e-4;
        double changeBefore = change(before, centre, slope);
        double at = guess;
        for (int i = 0; i < 100 && high - low > CLOSE; i++) {
            double change = change(at, centre, slope);
            if (change > 0) {
                low = Math.max(low, at);
            } else {
                high = Math.min(high, at);
            }
            double next = at - change * (at - before) / (change - changeBefore);
            if (Math.abs(next - at) < CLOSE && !Double.isInfinite(changeBefore)) {
                return Math.min(window, Math.max(-window, next));
            }
            before = at;
            changeBefore = change;
            // not so when the next is not a number
            at = next > low && next < high ? next : (low + high) / 2;
        }
        return (low + high) / 2;
    }

    /** Change of the radius per radian of turn at an azimuth; beyond the wheel it points back to it. */
    private double change(double psi, double centre, double slope) {
        cast(psi, centre);
        if (misses()) {
            return psi > 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        }
        return slope * byCentre - byAzimuth;
    }
}
