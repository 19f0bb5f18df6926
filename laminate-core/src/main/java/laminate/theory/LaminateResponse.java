package laminate.theory;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What a load does to a laminate: the six deformations, the six resultants, and three points a ply.
 *
 * @param load the load
 * @param deformation mid-plane strain ε0 and curvature κ
 * @param resultants N and M that the laminate then carries, those of held strains included
 * @param points mould-face side, middle and inner side of each ply, mould face first
 */
public record LaminateResponse(
        LaminateLoad load, Deformation deformation, Resultants resultants, List<PlyPoint> points) {
    /**
     * Checks that all are there.
     *
     * @param load the load
     * @param deformation mid-plane strain ε0 and curvature κ
     * @param resultants N and M that the laminate then carries, those of held strains included
     * @param points mould-face side, middle and inner side of each ply, mould face first
     */
    public LaminateResponse {
        Objects.requireNonNull(load, "load");
        Objects.requireNonNull(deformation, "deformation");
        Objects.requireNonNull(resultants, "resultants");
        points = List.copyOf(points);
    }

    /**
     * Response to a load by classical laminate theory, σ = Q̄ (ε0 + z κ − α ΔT − β c), and shear across the thickness
     * by {@link EquilibriumShear}.
     */
    static LaminateResponse of(Laminate laminate, LaminateLoad load) {
        List<Vector3> free = FreeStrain.of(laminate, load);
        MixedControl control = new MixedControl(laminate, laminate.held(free));
        Deformation deformation = control.deformation(load);
        Resultants resultants = control.resultants(load, deformation);
        return new LaminateResponse(load, deformation, resultants, points(laminate, load, free, deformation));
    }

    private static List<PlyPoint> points(
            Laminate laminate, LaminateLoad load, List<Vector3> free, Deformation deformation) {
        double[] heights = laminate.interfaces();
        List<ShearStress> shear = EquilibriumShear.of(laminate).atPlies(load.Qx(), load.Qy());
        List<PlyPoint> points = new ArrayList<>();
        for (int i = 0; i < laminate.plies().size(); i++) {
            for (PlyPoint.At at : PlyPoint.At.values()) {
                double z = at.between(heights[i], heights[i + 1]);
                Vector3 strain = deformation.at(z);
                Vector3 stress = laminate.stiffness(i).times(strain.minus(free.get(i)));
                points.add(point(laminate.plies().get(i).angle(), i, at, z, strain, stress, shear.get(points.size())));
            }
        }
        return points;
    }

    private static PlyPoint point(
            Angle angle, int ply, PlyPoint.At at, double z, Vector3 strain, Vector3 stress, ShearStress shear) {
        return new PlyPoint(
                ply,
                at,
                z,
                strain,
                stress,
                angle.strainToPly(strain),
                angle.stressToPly(stress),
                shear,
                angle.shearToPly(shear));
    }
}
