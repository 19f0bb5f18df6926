package laminate.theory.sandwich;

import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import laminate.theory.Deformation;
import laminate.theory.EngineeringConstants;
import laminate.theory.Laminate;
import laminate.theory.Require;
import laminate.theory.Vector3;

/**
 * The local failures of a sandwich in a laminate, given what its faces carry.
 *
 * <p>A face is taken as one thin sheet: its mean stress is turned to principal directions, and each compression is
 * weighed by itself, with the modulus of the face and the shear modulus of the core in its direction; the one with the
 * lesser reserve counts, which need not be the larger. The face is held flat by the core, so its modulus is that of its
 * membrane stiffness alone, and compression is taken as stiff as tension. Compression in both directions at once lowers
 * the wrinkling stress a little below what is found here.
 *
 * <p>What is not known or not loaded that way gives no check: empty, not a reserve of infinity.
 *
 * @param sandwich the sandwich
 * @param core the properties of its core
 */
public record LocalChecks(Sandwich sandwich, SandwichCore core) {
    /**
     * Checks that both are there and of one thickness.
     *
     * @param sandwich the sandwich
     * @param core the properties of its core
     * @throws IllegalArgumentException if the core has another thickness than the core of the sandwich
     */
    public LocalChecks {
        Objects.requireNonNull(sandwich, "sandwich");
        Objects.requireNonNull(core, "core");
        double laid = sandwich.core().thickness();
        if (Math.abs(core.thickness() - laid) > 1e-9 * laid) {
            throw new IllegalArgumentException(
                    "the core of the sandwich is " + laid + " m thick, its properties were for " + core.thickness());
        }
    }

    /**
     * One principal compression of a plane state of stress or force.
     *
     * @param size its magnitude (Pa or N/m)
     * @param degrees its direction from x towards y (°)
     */
    private record Compression(double size, double degrees) {
        /** What is left where stress along one direction alone is turned. */
        private static final double ROUNDING = 1e-12;

        /** The larger first. */
        static Stream<Compression> of(Vector3 s) {
            double radius = Math.hypot((s.x() - s.y()) / 2, s.xy());
            double mean = -(s.x() + s.y()) / 2;
            double turn = Math.toDegrees(Math.atan2(2 * s.xy(), s.x() - s.y())) / 2;
            return Stream.of(new Compression(mean + radius, turn + 90), new Compression(mean - radius, turn))
                    .filter(c -> c.size > ROUNDING * radius && c.size > 0);
        }
    }

    /**
     * Wrinkling of a face.
     *
     * @param face which
     * @param stress mean stress of the face: σx, σy, τxy (Pa)
     * @param rule for design or by theory
     * @return the check; empty if nothing is compressed
     */
    public Optional<LocalCheck> wrinkling(Face face, Vector3 stress, Wrinkling rule) {
        return least(LocalMode.WRINKLING, Optional.of(face), stress, degrees -> {
            double Ef = constants(face, degrees).Ex();
            return rule.stress(Ef, core.Ez(), core.shearModulus(degrees));
        });
    }

    /**
     * How deep a wrinkling face works the core, see {@link Wrinkling#decayDepth}. Wrinkling is in its range where the core
     * is at least twice as thick.
     *
     * @param face which
     * @param degrees direction of the compression, from x towards y (°)
     * @return the depth (m)
     */
    public double wrinklingDepth(Face face, double degrees) {
        return Wrinkling.decayDepth(
                sandwich.face(face).thickness(), constants(face, degrees).Ex(), core.Ez(), core.shearModulus(degrees));
    }

    /**
     * Dimpling of a face into the cells.
     *
     * @param face which
     * @param stress mean stress of the face: σx, σy, τxy (Pa)
     * @return the check; empty if nothing is compressed or the core has no cells
     */
    public Optional<LocalCheck> dimpling(Face face, Vector3 stress) {
        if (core.cellSize().isEmpty()) {
            return Optional.empty();
        }
        double t = sandwich.face(face).thickness();
        double s = core.cellSize().getAsDouble();
        return least(LocalMode.DIMPLING, Optional.of(face), stress, degrees -> {
            EngineeringConstants e = constants(face, degrees);
            return SandwichFormulas.dimplingStress(e.Ex(), e.nuxy() * e.nuyx(), t, s);
        });
    }

    /** Of both directions the one with the lesser reserve. */
    private static Optional<LocalCheck> least(
            LocalMode mode, Optional<Face> face, Vector3 demand, DoubleUnaryOperator critical) {
        return Compression.of(demand)
                .map(c -> LocalCheck.linear(mode, face, c.size(), critical.applyAsDouble(c.degrees())))
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(LocalCheck::reserveFactor));
    }

    private EngineeringConstants constants(Face face, double degrees) {
        Laminate seen = sandwich.face(face).turnedBy(-degrees);
        return seen.inPlaneRestrained();
    }

    /**
     * Shear crimping of the whole sandwich.
     *
     * @param force Nx, Ny, Nxy of the laminate (N/m)
     * @return the check in force per width; empty if nothing is compressed
     */
    public Optional<LocalCheck> shearCrimping(Vector3 force) {
        double d = sandwich.faceDistance();
        return least(
                LocalMode.SHEAR_CRIMPING,
                Optional.empty(),
                force,
                degrees -> SandwichFormulas.crimpingLoad(core.shearModulus(degrees), d, core.thickness()));
    }

    /**
     * Crushing of the core between bent faces: a face under force N follows the curvature κ, and presses on the core with
     * Nx κx + Ny κy + Nxy κxy, which is M²/(d D) where it is bent one way.
     *
     * @param deformation ε0 and κ of the whole laminate, without free expansion
     * @return the check by the face that presses harder; empty if neither presses or the core's strength is unknown
     */
    public Optional<LocalCheck> flexuralCrushing(Deformation deformation) {
        double inner = pressure(Face.INNER_FACE, deformation);
        double mould = -pressure(Face.MOULD_FACE, deformation);
        double pressure = Math.max(inner, mould);
        if (core.compressiveStrength().isEmpty() || !(pressure > 0)) {
            return Optional.empty();
        }
        double strength = core.compressiveStrength().getAsDouble();
        return Optional.of(LocalCheck.quadratic(LocalMode.FLEXURAL_CRUSHING, pressure, strength));
    }

    /** Towards −z. */
    private double pressure(Face face, Deformation deformation) {
        Vector3 force =
                sandwich.meanStress(face, deformation).times(sandwich.face(face).thickness());
        Vector3 curvature = deformation.curvature();
        return force.x() * curvature.x() + force.y() * curvature.y() + force.xy() * curvature.xy();
    }

    /**
     * Crushing of the core under a pressure on the face, the face spreading nothing.
     *
     * @param pressure force by area it stands on, by magnitude (Pa)
     * @return the check; empty if there is no pressure or the core's strength is unknown
     * @throws IllegalArgumentException if the pressure is not finite
     */
    public Optional<LocalCheck> bearing(double pressure) {
        double size = Math.abs(Require.finite("pressure", pressure));
        if (core.compressiveStrength().isEmpty() || size == 0) {
            return Optional.empty();
        }
        double strength = core.compressiveStrength().getAsDouble();
        return LocalCheck.linear(LocalMode.BEARING, Optional.empty(), size, strength);
    }

    /**
     * Indentation of a brittle face by a line load, {@link Indentation#elasticFaceLoad}.
     *
     * @param face the loaded face
     * @param lineLoad force per width, by magnitude (N/m)
     * @param faceStrength bending strength of the face across the line (Pa)
     * @return the check in force per width; empty if there is no load or the core's strength is unknown
     * @throws IllegalArgumentException if the load is not finite or the strength not positive
     */
    public Optional<LocalCheck> indentation(Face face, double lineLoad, double faceStrength) {
        double size = Math.abs(Require.finite("line load", lineLoad));
        Require.positive("face strength", faceStrength);
        if (core.compressiveStrength().isEmpty() || size == 0) {
            return Optional.empty();
        }
        double t = sandwich.face(face).thickness();
        double capacity =
                Indentation.elasticFaceLoad(1, t, core.compressiveStrength().getAsDouble(), faceStrength);
        return LocalCheck.linear(LocalMode.INDENTATION, Optional.of(face), size, capacity);
    }
}
