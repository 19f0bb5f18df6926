package laminate.theory;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Plies bonded to one plate, by classical laminate theory (Jones 1999, ch. 4; Kaw 2006, ch. 4).
 *
 * <p>z = 0 at mid-plane; the first ply lies at the mould face, z = −h/2. [N; M] = [[A, B], [B, D]] [ε0; κ] with
 * A = ∫ Q̄ dz, B = ∫ Q̄ z dz, D = ∫ Q̄ z² dz. Plane sections stay plane: shear across the thickness is left out,
 * which on a foam core concerns deflection and not A, B, D.
 *
 * <p>An unsymmetric laminate couples stretching and bending. The constants {@link #inPlane()} and {@link #flexural()}
 * leave it free to couple (from the 6×6 inverse); the {@code …Restrained} ones hold the coupled motion back.
 */
public final class Laminate {
    private final List<Ply> plies;
    private final ThroughThickness heights;
    private final List<ReducedStiffness> stiffness;
    private final Matrix3 membrane;
    private final Matrix3 coupling;
    private final Matrix3 bending;

    private Laminate(List<Ply> plies) {
        this.plies = List.copyOf(plies);
        if (plies.isEmpty()) {
            throw new IllegalArgumentException("a laminate has at least one ply, was given " + plies);
        }
        heights = new ThroughThickness(this.plies);
        stiffness = stiffness(this.plies);
        membrane = ThroughThickness.integral(stiffness, heights.zeroth());
        coupling = ThroughThickness.integral(stiffness, heights.first());
        bending = ThroughThickness.integral(stiffness, heights.second());
    }

    private static List<ReducedStiffness> stiffness(List<Ply> plies) {
        List<ReducedStiffness> stiffness = new ArrayList<>();
        for (Ply ply : plies) {
            stiffness.add(ply.stiffness());
        }
        return stiffness;
    }

    /**
     * A laminate from its plies.
     *
     * @param plies the plies as laid, mould face first
     * @return the laminate
     * @throws IllegalArgumentException if there are none
     */
    public static Laminate of(List<Ply> plies) {
        return new Laminate(plies);
    }

    /**
     * The plies as laid.
     *
     * @return mould face first; cannot be changed
     */
    public List<Ply> plies() {
        return plies;
    }

    /**
     * The same plate after it is turned, seen in the old axes; turned by −θ it is what a strip cut at θ from x sees.
     *
     * @param degrees the turn, from x towards y (°)
     * @return the laminate with the turn added to the angle of every ply
     * @throws IllegalArgumentException if the angle is not finite
     */
    public Laminate turnedBy(double degrees) {
        return of(plies.stream()
                .map(ply -> new Ply(ply.lamina(), ply.thickness(), ply.angleDegrees() + degrees))
                .toList());
    }

    /**
     * The thickness h of all plies.
     *
     * @return h (m)
     */
    public double thickness() {
        return heights.total();
    }

    /**
     * The heights of the faces and of the interfaces between plies.
     *
     * @return one more than there are plies, from −h/2 at the mould face to h/2 (m); the caller's own
     */
    public double[] interfaces() {
        return heights.interfaces();
    }

    /**
     * The membrane stiffness A = ∫ Q̄ dz.
     *
     * @return A (N/m)
     */
    public Matrix3 membrane() {
        return membrane;
    }

    /**
     * The coupling stiffness B = ∫ Q̄ z dz.
     *
     * @return B (N)
     */
    public Matrix3 coupling() {
        return coupling;
    }

    /**
     * The bending stiffness D = ∫ Q̄ z² dz.
     *
     * @return D (N·m)
     */
    public Matrix3 bending() {
        return bending;
    }

    /**
     * The inverse of the 6×6 stiffness.
     *
     * @return a, b, d
     * @throws IllegalArgumentException if the stiffness is singular to working precision
     */
    public Compliance compliance() {
        return Compliance.of(membrane, coupling, bending);
    }

    /**
     * The mid-plane strain and curvature under loads.
     *
     * @param load N and M
     * @return ε0 and κ
     * @throws IllegalArgumentException if the stiffness is singular to working precision
     */
    public Deformation deformationUnder(Resultants load) {
        return compliance().times(load);
    }

    /**
     * Strain, curvature and ply stresses under any load: forces, held strains, temperature, moisture, shear.
     *
     * @param load the load
     * @return the response
     * @throws IllegalArgumentException if the stiffness is singular to working precision, or the load has a change of
     *     temperature or moisture and the expansion of a ply is not known
     */
    public LaminateResponse responseTo(LaminateLoad load) {
        return LaminateResponse.of(this, load);
    }

    /**
     * Forces and moments that hold the laminate flat and unstrained per kelvin of warming, with the sign of
     * NT = ∫ Q̄ α dz, MT = ∫ Q̄ α z dz (added to N and M in the law of the package).
     *
     * @return NT (N/(m·K)) and MT (N/K); empty if the expansion of a ply is unknown
     */
    public Optional<Resultants> thermalResultants() {
        return freeResultants(Ply::thermalExpansion);
    }

    /**
     * Free deformation per kelvin, the laminate being free to couple.
     *
     * @return ε0 = αx, αy, αxy (1/K) and κ per kelvin (1/(m·K)); empty if the expansion of a ply is unknown
     */
    public Optional<Deformation> thermalExpansion() {
        return thermalResultants().map(this::deformationUnder);
    }

    /**
     * As {@link #thermalResultants()} for moisture, per unit moisture content.
     *
     * @return N (N/m) and M (N); empty if the moisture expansion of a ply is unknown
     */
    public Optional<Resultants> moistureResultants() {
        return freeResultants(Ply::moistureExpansion);
    }

    /**
     * As {@link #thermalExpansion()} for moisture, per unit moisture content, the same in all plies.
     *
     * @return ε0 = βx, βy, βxy and κ (1/m); empty if the moisture expansion of a ply is unknown
     */
    public Optional<Deformation> moistureExpansion() {
        return moistureResultants().map(this::deformationUnder);
    }

    private Optional<Resultants> freeResultants(Function<Ply, Optional<Vector3>> expansion) {
        List<Vector3> strain = new ArrayList<>();
        for (int i = 0; i < plies.size(); i++) {
            Optional<Vector3> free = expansion.apply(plies.get(i));
            if (free.isEmpty()) {
                return Optional.empty();
            }
            strain.add(free.get());
        }
        return Optional.of(held(strain));
    }

    /** N = ∫ Q̄ ε dz and M = ∫ Q̄ ε z dz of a strain that is constant in each ply. */
    Resultants held(List<Vector3> strain) {
        List<Vector3> stress = new ArrayList<>();
        for (int i = 0; i < plies.size(); i++) {
            stress.add(stiffness.get(i).times(strain.get(i)));
        }
        return new Resultants(
                ThroughThickness.resultant(stress, heights.zeroth()),
                ThroughThickness.resultant(stress, heights.first()));
    }

    /** Q̄ of ply i. */
    ReducedStiffness stiffness(int i) {
        return stiffness.get(i);
    }

    /**
     * In-plane constants free to couple: Ex = 1/(a11 h) and so on, from the 6×6 inverse.
     *
     * @return the constants
     * @throws IllegalArgumentException if the stiffness is singular to working precision
     */
    public EngineeringConstants inPlane() {
        return EngineeringConstants.of(compliance().a().times(thickness()));
    }

    /**
     * In-plane constants with curvature held back, from A⁻¹ alone; the usual textbook definition.
     *
     * @return the constants; equal to {@link #inPlane()} where B = 0
     */
    public EngineeringConstants inPlaneRestrained() {
        return EngineeringConstants.of(membrane.inverse().times(thickness()));
    }

    /**
     * Bending constants free to couple: Ex = 12/(d11 h³) and so on, from the 6×6 inverse.
     *
     * @return the constants
     * @throws IllegalArgumentException if the stiffness is singular to working precision
     */
    public EngineeringConstants flexural() {
        return EngineeringConstants.of(compliance().d().times(plateFactor()));
    }

    /**
     * Bending constants with mid-plane strain held back, from D⁻¹ alone.
     *
     * @return the constants; equal to {@link #flexural()} where B = 0
     */
    public EngineeringConstants flexuralRestrained() {
        return EngineeringConstants.of(bending.inverse().times(plateFactor()));
    }

    private double plateFactor() {
        return thickness() * thickness() * thickness() / 12;
    }

    /**
     * Whether the list of plies reads the same from either face.
     *
     * @return true if lamina, thickness and angle (to half a turn) of opposite plies are equal
     */
    public boolean isSymmetric() {
        int last = plies.size() - 1;
        for (int i = 0; i < last - i; i++) {
            if (!alike(plies.get(i), plies.get(last - i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean alike(Ply one, Ply other) {
        return one.lamina().equals(other.lamina())
                && one.thickness() == other.thickness()
                && one.angle().equals(other.angle());
    }

    /**
     * Whether stretching and bending are coupled, that is B is more than rounding: above 10⁻¹² of A h.
     *
     * @return true if B counts
     */
    public boolean isCoupled() {
        return coupling.scale() > 1e-12 * membrane.scale() * thickness();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Laminate laminate && plies.equals(laminate.plies);
    }

    @Override
    public int hashCode() {
        return plies.hashCode();
    }

    @Override
    public String toString() {
        return "Laminate" + plies;
    }
}
