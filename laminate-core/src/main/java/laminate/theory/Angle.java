package laminate.theory;

/**
 * The angle of a ply, from x towards y, with the turning of stress and strain between laminate and ply axes.
 *
 * <p>A ply looks the same after half a turn, so the angle is kept in (−90°, 90°]. Everything is written in cos 2θ and
 * sin 2θ, which are exact at multiples of 45°, and θ + 90° gives exactly the values of θ with the axes exchanged.
 */
public final class Angle {
    private final double degrees;
    /** cos²θ, sin²θ, sinθ cosθ and cos 2θ. */
    private final double cc;

    private final double ss;
    private final double sc;
    private final double cos2;

    private Angle(double degrees) {
        this.degrees = degrees;
        cos2 = cosDegrees(2 * degrees);
        cc = (1 + cos2) / 2;
        ss = (1 - cos2) / 2;
        sc = sinDegrees(2 * degrees) / 2;
    }

    /**
     * An angle in degrees, any number of turns.
     *
     * @param degrees the angle from x towards y (°)
     * @return the angle
     * @throws IllegalArgumentException if it is not finite
     */
    public static Angle ofDegrees(double degrees) {
        double folded = Math.IEEEremainder(Require.finite("angle", degrees), 180);
        return new Angle(folded == -90 ? 90 : folded + 0.0);
    }

    /** Folds to at most 45°, where the library function is good and the special angles come out exact. */
    private static double cosDegrees(double x) {
        double a = Math.abs(x);
        if (a > 90) {
            return -cosDegrees(180 - a);
        }
        return a > 45 ? StrictMath.sin(Math.toRadians(90 - a)) : StrictMath.cos(Math.toRadians(a));
    }

    private static double sinDegrees(double x) {
        if (x < 0) {
            return -sinDegrees(-x);
        }
        if (x > 90) {
            return sinDegrees(180 - x);
        }
        return x > 45 ? StrictMath.cos(Math.toRadians(90 - x)) : StrictMath.sin(Math.toRadians(x));
    }

    /**
     * The angle folded to half a turn.
     *
     * @return the angle (°), above −90 and up to 90
     */
    public double degrees() {
        return degrees;
    }

    /** cos²θ. */
    double cosSquared() {
        return cc;
    }

    /** sin²θ. */
    double sinSquared() {
        return ss;
    }

    /** sinθ cosθ. */
    double sinCos() {
        return sc;
    }

    /** cos 2θ = cos²θ − sin²θ. */
    double cosDouble() {
        return cos2;
    }

    /**
     * A stress in laminate axes seen in ply axes: σ1 = σx c² + σy s² + 2 τxy s c, and so on (Jones 1999, ch. 2).
     *
     * @param stress σx, σy, τxy (Pa)
     * @return σ1, σ2, τ12 (Pa)
     */
    public Vector3 stressToPly(Vector3 stress) {
        return turnedStress(stress, sc);
    }

    /**
     * A stress in ply axes seen in laminate axes, the inverse of {@link #stressToPly}.
     *
     * @param stress σ1, σ2, τ12 (Pa)
     * @return σx, σy, τxy (Pa)
     */
    public Vector3 stressFromPly(Vector3 stress) {
        return turnedStress(stress, -sc);
    }

    private Vector3 turnedStress(Vector3 s, double sinCos) {
        return new Vector3(
                cc * s.x() + ss * s.y() + 2 * sinCos * s.xy(),
                ss * s.x() + cc * s.y() - 2 * sinCos * s.xy(),
                sinCos * (s.y() - s.x()) + cos2 * s.xy());
    }

    /**
     * A strain in laminate axes seen in ply axes, shear being engineering strain: ε1 = εx c² + εy s² + γxy s c.
     *
     * @param strain εx, εy, γxy
     * @return ε1, ε2, γ12
     */
    public Vector3 strainToPly(Vector3 strain) {
        return turnedStrain(strain, sc);
    }

    /**
     * A strain (or expansion) in ply axes seen in laminate axes, the inverse of {@link #strainToPly}.
     *
     * @param strain ε1, ε2, γ12
     * @return εx, εy, γxy
     */
    public Vector3 strainFromPly(Vector3 strain) {
        return turnedStrain(strain, -sc);
    }

    private Vector3 turnedStrain(Vector3 e, double sinCos) {
        return new Vector3(
                cc * e.x() + ss * e.y() + sinCos * e.xy(),
                ss * e.x() + cc * e.y() - sinCos * e.xy(),
                2 * sinCos * (e.y() - e.x()) + cos2 * e.xy());
    }

    /**
     * A shear stress across the thickness seen in ply axes: τ13 = τxz cosθ + τyz sinθ, τ23 = τyz cosθ − τxz sinθ.
     *
     * @param shear τxz, τyz (Pa)
     * @return τ13, τ23 (Pa)
     */
    public ShearStress shearToPly(ShearStress shear) {
        double cos = cosDegrees(degrees);
        double sin = sinDegrees(degrees);
        return new ShearStress(cos * shear.xz() + sin * shear.yz(), cos * shear.yz() - sin * shear.xz());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Angle angle && degrees == angle.degrees;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(degrees);
    }

    @Override
    public String toString() {
        return degrees + "°";
    }
}
