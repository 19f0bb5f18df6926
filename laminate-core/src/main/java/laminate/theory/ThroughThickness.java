package laminate.theory;

import java.util.List;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;

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
        thickness = plies.stream().mapToDouble(Ply::thickness).toArray();
        double[] below = new double[count + 1];
        double[] above = new double[count + 1];
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

    /** ∫ dz over ply i (m). */
    double zeroth(int i) {
        return thickness[i];
    }

    /** ∫ z dz over ply i (m²). */
    double first(int i) {
        return thickness[i] * middle[i];
    }

    /** ∫ z² dz over ply i (m³). */
    double second(int i) {
        return thickness[i] * (middle[i] * middle[i] + thickness[i] * thickness[i] / 12);
    }

    Matrix3 integral(List<ReducedStiffness> q, IntToDoubleFunction weight) {
        return Matrix3.symmetric(
                CompensatedSum.of(count, i -> q.get(i).Q11() * weight.applyAsDouble(i)),
                CompensatedSum.of(count, i -> q.get(i).Q12() * weight.applyAsDouble(i)),
                CompensatedSum.of(count, i -> q.get(i).Q22() * weight.applyAsDouble(i)),
                CompensatedSum.of(count, i -> q.get(i).Q16() * weight.applyAsDouble(i)),
                CompensatedSum.of(count, i -> q.get(i).Q26() * weight.applyAsDouble(i)),
                CompensatedSum.of(count, i -> q.get(i).Q66() * weight.applyAsDouble(i)));
    }

    Vector3 integral(IntFunction<Vector3> stress, IntToDoubleFunction weight) {
        return new Vector3(
                CompensatedSum.of(count, i -> stress.apply(i).x() * weight.applyAsDouble(i)),
                CompensatedSum.of(count, i -> stress.apply(i).y() * weight.applyAsDouble(i)),
                CompensatedSum.of(count, i -> stress.apply(i).xy() * weight.applyAsDouble(i)));
    }
}
