package laminate.theory;

/**
 * The strength of a straight, woven or random ply from those of its fibre and matrix, by {@link StrengthFormulas}.
 *
 * <p>In-plane shear of a straight ply is taken as that of the matrix with its voids, S = τm (Hull and Clyne 1996, ch. 8,
 * from memory). Hand-laid E-glass and ortho polyester come within 25 % of class-rule figures along the fibres, in woven
 * roving and in mat; across the fibres at 0.5 to 1.4 times, and in shear of woven roving at half, since the rules count
 * large strains. Of four plies of the World-Wide Failure Exercise Xt is 1.0 to 1.2, Xc 0.6 to 1.2 and S 0.7 to 1.0 times
 * that measured.
 */
public final class StrengthMicromechanics {

    /**
     * Angle by which fibres run askew where a ply kinks (rad), 4°. Measured 2 to 4° (Budiansky and Fleck 1993, from
     * memory); at the upper end plies of glass and carbon come out near their tests.
     */
    public static final double MISALIGNMENT = Math.toRadians(4);

    private StrengthMicromechanics() {}

    /**
     * Strength of a straight ply.
     *
     * @param fibre elastic constants of the fibre
     * @param fibreStrength strength of the fibre
     * @param matrix elastic constants of the matrix, without voids
     * @param matrixStrength strength of the matrix, without voids
     * @param Vf fibre volume fraction of the whole
     * @param Vv void fraction of the whole
     * @return the strength; S23 and strain limits unknown
     * @throws IllegalArgumentException if the fractions cannot be, or the voids leave the matrix no strength
     */
    public static PlyStrength straight(
            FibreProperties fibre,
            FibreStrength fibreStrength,
            MatrixProperties matrix,
            MatrixStrength matrixStrength,
            double Vf,
            double Vv) {
        MatrixProperties porous = matrix.withVoids(Vf, Vv);
        MatrixStrength weak = matrixStrength.scaledBy(Require.positive(
                "what voids leave of the strength of the matrix", StrengthFormulas.voidFactor(Vf, Vv)));
        double S = weak.shear();
        return PlyStrength.of(
                StrengthFormulas.alongInTension(
                        fibreStrength.tension(), fibre.E1(), porous.E(), weak.tension(), weak.elongation(), Vf),
                alongInCompression(fibre, fibreStrength, porous, S, Vf),
                StrengthFormulas.across(weak.tension(), porous.E(), fibre.E2(), Vf),
                StrengthFormulas.across(weak.compression(), porous.E(), fibre.E2(), Vf),
                S);
    }

    /** Kinking of the ply, by its G12 after Halpin and Tsai, or the fibre giving way by itself, whichever comes first. */
    private static double alongInCompression(
            FibreProperties fibre, FibreStrength strength, MatrixProperties porous, double S, double Vf) {
        double G12 = UnidirectionalFormulas.halpinTsai(fibre.G12(), porous.G(), Vf, 1);
        double kinking = StrengthFormulas.kinking(G12, S, MISALIGNMENT);
        if (strength.compression().isEmpty()) {
            return kinking;
        }
        double sigma = strength.compression().getAsDouble();
        return Math.min(kinking, UnidirectionalFormulas.ruleOfMixtures(sigma, porous.E() * sigma / fibre.E1(), Vf));
    }

    /**
     * Strength of a woven ply, as two crossed straight plies of which only the one along the load counts:
     * X = k s X' along the warp and k (1 − s) X' along the weft, at least the Y' across a straight ply; shear as it is.
     *
     * @param straight strength X', Y' of the straight ply at the fibre content of the fabric
     * @param warpShare share s of the fibre that runs in the warp, from 0 to 1
     * @param crimp knock-down k for crimp, above 0 and up to 1
     * @return the strength of the fabric
     * @throws IllegalArgumentException if the share or the knock-down cannot be
     */
    public static PlyStrength woven(PlyStrength straight, double warpShare, double crimp) {
        double warp = Require.share("warp share", warpShare) * Require.positiveShare("crimp knock-down", crimp);
        double weft = (1 - warpShare) * crimp;
        return PlyStrength.of(
                Math.max(warp * straight.Xt(), straight.Yt()),
                Math.max(warp * straight.Xc(), straight.Yc()),
                Math.max(weft * straight.Xt(), straight.Yt()),
                Math.max(weft * straight.Xc(), straight.Yc()),
                straight.S());
    }

    /**
     * Strength of a random mat: tension and compression by {@link StrengthFormulas#random}, shear by
     * {@link StrengthFormulas#paraboloidShear} of the two.
     *
     * @param straight strength of the straight ply at the fibre content of the mat
     * @return the strength of the mat
     * @throws IllegalArgumentException if shear governs at no angle, X Y &lt; S²
     */
    public static MatStrength mat(PlyStrength straight) {
        double tension = random("tension", straight.Xt(), straight.Yt(), straight.S());
        double compression = random("compression", straight.Xc(), straight.Yc(), straight.S());
        return new MatStrength(tension, compression, StrengthFormulas.paraboloidShear(tension, compression));
    }

    private static double random(String what, double X, double Y, double S) {
        if (X / S * (Y / S) < 1) {
            throw new IllegalArgumentException("the strength of a mat in " + what
                    + " wants X Y of at least S², were X = " + X + ", Y = " + Y + ", S = " + S);
        }
        return StrengthFormulas.random(X, Y, S);
    }
}
