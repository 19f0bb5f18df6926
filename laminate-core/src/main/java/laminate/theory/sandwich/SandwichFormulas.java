package laminate.theory.sandwich;

import laminate.theory.Require;

/**
 * Classical formulas of sandwich beams and panels with thin faces on a soft core: the faces carry the moment, the core
 * the shear force (Allen 1969; Zenkert 1995; from memory). What is left out is below 1 % where d &gt; 5.8 t and
 * 6 Ef t d² &gt; 100 Ec c³.
 */
public final class SandwichFormulas {
    private SandwichFormulas() {}

    /**
     * Shear stiffness S = b Gc d²/c, the shear stress taken as even over the core and falling off in the faces.
     *
     * @param b width (m)
     * @param Gc shear modulus of the core (Pa)
     * @param d distance between the middles of the faces (m)
     * @param c thickness of the core (m)
     * @return S (N)
     * @throws IllegalArgumentException if an argument is not positive
     */
    public static double shearStiffness(double b, double Gc, double d, double c) {
        Require.positive("width", b);
        return Require.finite("shear stiffness", b * crimpingLoad(Gc, d, c));
    }

    /**
     * Mean stress of a face, M/(b t d), the face taken as thin.
     *
     * @param M moment over the width (N·m)
     * @param b width (m)
     * @param t thickness of the face (m)
     * @param d distance between the middles of the faces (m)
     * @return its magnitude with the sign of M (Pa)
     * @throws IllegalArgumentException if M is not finite or another not positive
     */
    public static double faceStress(double M, double b, double t, double d) {
        Require.finite("moment", M);
        double section =
                Require.positive("width", b) * Require.positive("face thickness", t) * Require.positive("d", d);
        return Require.finite("face stress", M / section);
    }

    /**
     * Stress at a height by bending theory, M E z/D.
     *
     * @param M moment over the width (N·m)
     * @param E modulus of the layer there along the beam (Pa)
     * @param z height from the neutral axis (m); h/2 for the outer fibre of equal faces
     * @param D bending stiffness of the beam (N·m²)
     * @return the stress (Pa)
     * @throws IllegalArgumentException if M or z is not finite or another not positive
     */
    public static double stressAtHeight(double M, double E, double z, double D) {
        Require.finite("moment", M);
        Require.finite("height", z);
        return Require.finite(
                "stress", M * Require.positive("modulus", E) * z / Require.positive("bending stiffness", D));
    }

    /**
     * Shear stress of the core, V/(b d), even over a soft core.
     *
     * @param V shear force over the width (N)
     * @param b width (m)
     * @param d distance between the middles of the faces (m)
     * @return the stress (Pa)
     * @throws IllegalArgumentException if V is not finite or another not positive
     */
    public static double coreShear(double V, double b, double d) {
        Require.finite("shear force", V);
        return Require.finite("core shear stress", V / (Require.positive("width", b) * Require.positive("d", d)));
    }

    /**
     * Load at which a panel in compression shears away in short waves, shear crimping: N = Gc d²/c (Sullins and others
     * 1969, from memory). It is the limit of buckling for a short length.
     *
     * @param Gc shear modulus of the core in the plane of load and thickness (Pa)
     * @param d distance between the middles of the faces (m)
     * @param c thickness of the core (m)
     * @return critical compressive force per width, both faces together (N/m)
     * @throws IllegalArgumentException if an argument is not positive
     */
    public static double crimpingLoad(double Gc, double d, double c) {
        Require.positive("core shear modulus", Gc);
        Require.positive("d", d);
        return Require.finite("crimping load", Gc * d * d / Require.positive("core thickness", c));
    }

    /**
     * The stress of the faces at the load of {@link #crimpingLoad}, Gc d²/((t1 + t2) c).
     *
     * @param Gc shear modulus of the core in the plane of load and thickness (Pa)
     * @param d distance between the middles of the faces (m)
     * @param c thickness of the core (m)
     * @param faces thickness of both faces together, t1 + t2 (m)
     * @return critical compressive stress (Pa)
     * @throws IllegalArgumentException if an argument is not positive
     */
    public static double crimpingStress(double Gc, double d, double c, double faces) {
        double load = crimpingLoad(Gc, d, c);
        return Require.finite("crimping stress", load / Require.positive("thickness of the faces", faces));
    }

    /**
     * Dimpling of a face into the cells of a honeycomb, 2 Ef/(1 − ν²) (t/s)² (Sullins and others 1969, from memory), for
     * an elastic face that is thin against the cell.
     *
     * @param Ef modulus of the face in the direction of compression (Pa)
     * @param nuSquared ν² of the face, ν12 ν21 where it is orthotropic; from 0 to below 1
     * @param t thickness of the face (m)
     * @param s cell size, the diameter of the circle within a cell (m)
     * @return critical compressive stress (Pa)
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public static double dimplingStress(double Ef, double nuSquared, double t, double s) {
        if (!(nuSquared >= 0 && nuSquared < 1)) {
            throw new IllegalArgumentException(
                    "the square of Poisson's ratio lies from 0 to below 1, was " + nuSquared);
        }
        double slenderness = Require.positive("face thickness", t) / Require.positive("cell size", s);
        return Require.finite(
                "dimpling stress",
                2 * Require.positive("face modulus", Ef) / (1 - nuSquared) * slenderness * slenderness);
    }

    /**
     * Pressure with which the faces of a bent sandwich press on its core, M²/(d D) per width: a face under force M/d
     * follows the curvature M/D (Zenkert 1995, from memory). It grows with the square of the load.
     *
     * @param M moment per width (N·m/m)
     * @param d distance between the middles of the faces (m)
     * @param D bending stiffness per width (N·m)
     * @return compression of the core through the thickness (Pa)
     * @throws IllegalArgumentException if M is not finite or another not positive
     */
    public static double flexuralCrushing(double M, double d, double D) {
        Require.finite("moment", M);
        return Require.finite(
                "crushing pressure", M * M / (Require.positive("d", d) * Require.positive("bending stiffness", D)));
    }
}
