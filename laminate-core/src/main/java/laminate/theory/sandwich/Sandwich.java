package laminate.theory.sandwich;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import laminate.theory.CoreStrength;
import laminate.theory.Deformation;
import laminate.theory.Laminate;
import laminate.theory.LaminateResponse;
import laminate.theory.Ply;
import laminate.theory.PlyPoint;
import laminate.theory.Vector3;

/**
 * A core in a laminate with the face on either side of it. A laminate with several cores apart has one of these for each;
 * a layer between two cores is a face of both.
 *
 * <p>Plies are counted from 0 at the mould face: the mould-side face is plies [start, coreStart), the core
 * [coreStart, coreEnd), the inner face [coreEnd, end).
 *
 * @param laminate the whole laminate
 * @param start first ply of the mould-side face
 * @param coreStart first ply of the core
 * @param coreEnd ply after the last of the core
 * @param end ply after the last of the inner face
 */
public record Sandwich(Laminate laminate, int start, int coreStart, int coreEnd, int end) {
    /**
     * Checks that face, core and face have plies.
     *
     * @param laminate the whole laminate
     * @param start first ply of the mould-side face
     * @param coreStart first ply of the core
     * @param coreEnd ply after the last of the core
     * @param end ply after the last of the inner face
     * @throws IllegalArgumentException if one of the three has none
     */
    public Sandwich {
        Objects.requireNonNull(laminate, "laminate");
        int plies = laminate.plies().size();
        if (!(0 <= start && start < coreStart && coreStart < coreEnd && coreEnd < end && end <= plies)) {
            throw new IllegalArgumentException("face, core and face must each have plies among the " + plies
                    + " of the laminate, was " + start + ", " + coreStart + ", " + coreEnd + ", " + end);
        }
    }

    /**
     * A sandwich whose core is named by its plies; everything on either side of it is face.
     *
     * @param laminate the laminate
     * @param firstCorePly first ply of the core, counted from 0
     * @param lastCorePly last ply of the core
     * @return the sandwich
     * @throws IllegalArgumentException if there is no core or no face on one side
     */
    public static Sandwich withCore(Laminate laminate, int firstCorePly, int lastCorePly) {
        return new Sandwich(
                laminate, 0, firstCorePly, lastCorePly + 1, laminate.plies().size());
    }

    /**
     * The sandwiches in a laminate: a core is a run of plies whose strength is a {@link CoreStrength}, a face what lies
     * between it and the next core or the surface.
     *
     * @param laminate the laminate
     * @return one for each core with a face on either side, mould face first; empty for a solid laminate
     */
    public static List<Sandwich> in(Laminate laminate) {
        List<Ply> plies = laminate.plies();
        int[] ends = IntStream.rangeClosed(0, plies.size())
                .filter(i -> i == 0 || i == plies.size() || isCore(plies.get(i)) != isCore(plies.get(i - 1)))
                .toArray();
        List<Sandwich> found = new ArrayList<>();
        for (int i = 1; i + 2 < ends.length; i++) {
            if (isCore(plies.get(ends[i]))) {
                found.add(new Sandwich(laminate, ends[i - 1], ends[i], ends[i + 1], ends[i + 2]));
            }
        }
        return List.copyOf(found);
    }

    private static boolean isCore(Ply ply) {
        return ply.lamina().strength().filter(CoreStrength.class::isInstance).isPresent();
    }

    /**
     * A face as a laminate of its own.
     *
     * @param face which
     * @return its plies
     */
    public Laminate face(Face face) {
        return face == Face.MOULD_FACE ? part(start, coreStart) : part(coreEnd, end);
    }

    /**
     * The core as a laminate of its own.
     *
     * @return its plies
     */
    public Laminate core() {
        return part(coreStart, coreEnd);
    }

    private Laminate part(int from, int to) {
        return Laminate.of(laminate.plies().subList(from, to));
    }

    /**
     * Distance between the middles of the faces.
     *
     * @return d = c + (t1 + t2)/2 (m)
     */
    public double faceDistance() {
        return core().thickness() + facesThickness() / 2;
    }

    /**
     * Thickness of both faces together.
     *
     * @return t1 + t2 (m)
     */
    public double facesThickness() {
        return face(Face.MOULD_FACE).thickness() + face(Face.INNER_FACE).thickness();
    }

    /**
     * The mean stress of a face under a deformation that is mechanical only.
     *
     * @param face which
     * @param deformation ε0 and κ of the whole laminate, without free expansion
     * @return σx, σy, τxy (Pa)
     */
    public Vector3 meanStress(Face face, Deformation deformation) {
        double[] z = laminate.interfaces();
        List<Vector3> middles = IntStream.range(0, z.length - 1)
                .mapToObj(i -> laminate.plies().get(i).stress(deformation.at((z[i] + z[i + 1]) / 2)))
                .toList();
        return meanStress(face, middles);
    }

    /**
     * The mean stress of a face in a response, residual stress included.
     *
     * @param face which
     * @param response what a load does to the whole laminate
     * @return σx, σy, τxy (Pa)
     * @throws IllegalArgumentException if the response is that of a laminate with another number of plies
     */
    public Vector3 meanStress(Face face, LaminateResponse response) {
        return meanStress(
                face,
                response.points().stream()
                        .filter(point -> point.at() == PlyPoint.At.MIDDLE)
                        .map(PlyPoint::stress)
                        .toList());
    }

    /** Stresses vary linearly within a ply, so that its middle has its mean. */
    private Vector3 meanStress(Face face, List<Vector3> middles) {
        List<Ply> plies = laminate.plies();
        if (middles.size() != plies.size()) {
            throw new IllegalArgumentException(
                    "the response must be that of " + plies.size() + " plies, was of " + middles.size());
        }
        int from = face == Face.MOULD_FACE ? start : coreEnd;
        int to = face == Face.MOULD_FACE ? coreStart : end;
        Vector3 force = Vector3.ZERO;
        for (int i = from; i < to; i++) {
            force = force.plus(middles.get(i).times(plies.get(i).thickness()));
        }
        return force.times(1 / face(face).thickness());
    }
}
