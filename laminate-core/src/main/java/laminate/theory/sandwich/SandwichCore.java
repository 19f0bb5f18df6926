package laminate.theory.sandwich;

import java.util.List;
import java.util.OptionalDouble;
import laminate.theory.Angle;
import laminate.theory.CoreStrength;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.Ply;
import laminate.theory.Require;
import laminate.theory.Vector3;

/**
 * What a core gives its faces: support through the thickness and shear. A lamina does not know its modulus through the
 * thickness, so it stands here.
 *
 * @param thickness c (m)
 * @param Ez modulus through the thickness (Pa)
 * @param Gxz shear modulus in the x-z plane of the laminate (Pa)
 * @param Gyz shear modulus in the y-z plane (Pa)
 * @param Gxzyz coupling of both, τxz per γyz; 0 unless the core's directions lie askew (Pa)
 * @param compressiveStrength through the thickness, if known (Pa)
 * @param cellSize diameter of the circle within a cell of a honeycomb (m); empty for a foam or balsa
 */
public record SandwichCore(
        double thickness,
        double Ez,
        double Gxz,
        double Gyz,
        double Gxzyz,
        OptionalDouble compressiveStrength,
        OptionalDouble cellSize) {
    /**
     * Checks the core.
     *
     * @param thickness c (m)
     * @param Ez modulus through the thickness (Pa)
     * @param Gxz shear modulus in the x-z plane of the laminate (Pa)
     * @param Gyz shear modulus in the y-z plane (Pa)
     * @param Gxzyz coupling of both (Pa)
     * @param compressiveStrength through the thickness, if known (Pa)
     * @param cellSize diameter of the circle within a cell of a honeycomb (m)
     * @throws IllegalArgumentException if a size, modulus or strength is not positive, or shearing takes no energy
     */
    public SandwichCore {
        Require.positive("core thickness", thickness);
        Require.positive("Ez", Ez);
        Require.positive("Gxz", Gxz);
        Require.positive("Gyz", Gyz);
        Require.finite("Gxzyz", Gxzyz);
        Require.positive("determinant of the core's shear moduli", Gxz * Gyz - Gxzyz * Gxzyz);
        compressiveStrength.ifPresent(s -> Require.positive("compressive strength", s));
        cellSize.ifPresent(s -> Require.positive("cell size", s));
    }

    /**
     * A core that shears alike in every direction, as a foam.
     *
     * @param thickness c (m)
     * @param Ez modulus through the thickness (Pa)
     * @param G shear modulus (Pa)
     * @return the core; strength unknown
     * @throws IllegalArgumentException if an argument is not positive
     */
    public static SandwichCore of(double thickness, double Ez, double G) {
        return new SandwichCore(thickness, Ez, G, G, 0, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * The core of a sandwich from its plies, one on another: compliances add up by thickness. The strength is that of the
     * weakest ply, known if it is known of all.
     *
     * @param core the plies of the core
     * @param Ez modulus through the thickness of the whole core (Pa)
     * @return the core, without cells
     * @throws IllegalArgumentException if Ez is not positive
     */
    public static SandwichCore of(Laminate core, double Ez) {
        Vector3 s = Vector3.ZERO;
        for (Ply ply : core.plies()) {
            s = s.plus(shearCompliance(ply).times(ply.thickness() / core.thickness()));
        }
        double determinant = s.x() * s.y() - s.xy() * s.xy();
        return new SandwichCore(
                core.thickness(),
                Ez,
                s.y() / determinant,
                s.x() / determinant,
                -s.xy() / determinant + 0.0,
                weakest(core.plies()),
                OptionalDouble.empty());
    }

    /** xz-xz, yz-yz, xz-yz of diag(1/G13, 1/G23) turned by the angle of the ply; turns like a stress. */
    private static Vector3 shearCompliance(Ply ply) {
        Lamina lamina = ply.lamina();
        return ply.angle().stressFromPly(new Vector3(1 / lamina.G13(), 1 / lamina.G23(), 0));
    }

    private static OptionalDouble weakest(List<Ply> plies) {
        double weakest = Double.POSITIVE_INFINITY;
        for (Ply ply : plies) {
            if (!(ply.lamina().strength().orElse(null) instanceof CoreStrength strength)) {
                return OptionalDouble.empty();
            }
            weakest = Math.min(weakest, strength.compression());
        }
        return OptionalDouble.of(weakest);
    }

    /**
     * This core with its compressive strength.
     *
     * @param strength through the thickness (Pa)
     * @return the copy
     * @throws IllegalArgumentException if it is not positive
     */
    public SandwichCore withCompressiveStrength(double strength) {
        return new SandwichCore(thickness, Ez, Gxz, Gyz, Gxzyz, OptionalDouble.of(strength), cellSize);
    }

    /**
     * This core as a honeycomb.
     *
     * @param size diameter of the circle within a cell (m)
     * @return the copy
     * @throws IllegalArgumentException if it is not positive
     */
    public SandwichCore withCellSize(double size) {
        return new SandwichCore(thickness, Ez, Gxz, Gyz, Gxzyz, compressiveStrength, OptionalDouble.of(size));
    }

    /**
     * Shear modulus in the plane of a direction and the thickness, G = Gxz c² + 2 Gxzyz s c + Gyz s².
     *
     * @param degrees the direction, from x towards y (°)
     * @return Gc (Pa)
     * @throws IllegalArgumentException if the angle is not finite
     */
    public double shearModulus(double degrees) {
        return Angle.ofDegrees(degrees)
                .stressToPly(new Vector3(Gxz, Gyz, Gxzyz))
                .x();
    }
}
