package laminate.theory;

import java.util.List;

/**
 * Heights of the plies and the integrals ∫ f dz, ∫ f z dz, ∫ f z² dz of what is constant in each ply.
 *
 * <p>A height is half the difference of what lies below and what lies above, each summed from its own face: so the
 * heights of a symmetric laminate are exact opposites and its B is 0.0.
 */
final class ThroughThickness {
    private final int count;
    private final double[] thickness;
    private final double[] middle;
    private final double[] interfaces;

    ThroughThickness(List<Ply> plies) {
        count = plies.size();
        thickness = new double[count];
        double[] below = new double[count + 1];
        double[] above = new double[count + 1];
        for (int i = 0; i < count; i++) {
            thickness[i] = plies.get(i).thickness();
        }
        for (int i = 0; i < count; i++) {
            below[i + 1] = below[i] + thickness[i];
            above[count - 1 - i] = above[count - i] + thickness[count - 1 - i];
        }
        interfaces = new double[count + 1];
        middle = new double[count];
        for (int i = 0; i <= count; i++) {
            interfaces[i] = (below[i] - above[i]) / 2;
        }
        for (int i = 0; i < count; i++) {
            middle[i] = (below[i] - above[i + 1]) / 2;
        }
        Require.finite("laminate thickness", below[count]);
    }

    double total() {
        return interfaces[count] - interfaces[0];
    }

    double[] interfaces() {
        return interfaces.clone();
    }

    /** ∫ dz over each ply (m). */
    double[] zeroth() {
        return thickness.clone();
    }

    /** ∫ z dz over each ply (m²). */
    double[] first() {
        double[] moments = new double[count];
        for (int i = 0; i < count; i++) {
            moments[i] = thickness[i] * middle[i];
        }
        return moments;
    }

    /** ∫ z² dz over each ply (m³). */
    double[] second() {
        double[] moments = new double[count];
        for (int i = 0; i < count; i++) {
            moments[i] = thickness[i] * (middle[i] * middle[i] + thickness[i] * thickness[i] / 12);
        }
        return moments;
    }

    /** The sum of Q̄ of each ply times its weight, one of the integrals above. */
    static Matrix3 integral(List<ReducedStiffness> stiffness, double[] weight) {
        CompensatedSum Q11 = new CompensatedSum();
        CompensatedSum Q12 = new CompensatedSum();
        CompensatedSum Q22 = new CompensatedSum();
        CompensatedSum Q16 = new CompensatedSum();
        CompensatedSum Q26 = new CompensatedSum();
        CompensatedSum Q66 = new CompensatedSum();
        for (int i = 0; i < weight.length; i++) {
            ReducedStiffness q = stiffness.get(i);
            Q11.add(q.Q11() * weight[i]);
            Q12.add(q.Q12() * weight[i]);
            Q22.add(q.Q22() * weight[i]);
            Q16.add(q.Q16() * weight[i]);
            Q26.add(q.Q26() * weight[i]);
            Q66.add(q.Q66() * weight[i]);
        }
        return Matrix3.symmetric(Q11.value(), Q12.value(), Q22.value(), Q16.value(), Q26.value(), Q66.value());
    }

    /** The sum of the stress of each ply times its weight. */
    static Vector3 resultant(List<Vector3> stress, double[] weight) {
        CompensatedSum x = new CompensatedSum();
        CompensatedSum y = new CompensatedSum();
        CompensatedSum xy = new CompensatedSum();
        for (int i = 0; i < weight.length; i++) {
            x.add(stress.get(i).x() * weight[i]);
            y.add(stress.get(i).y() * weight[i]);
            xy.add(stress.get(i).xy() * weight[i]);
        }
        return new Vector3(x.value(), y.value(), xy.value());
    }
}
