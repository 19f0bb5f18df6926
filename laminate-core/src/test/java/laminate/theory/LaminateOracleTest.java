package laminate.theory;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/**
 * A, B, D, the inverse and the thermal resultants by another road, with a general-purpose linear-algebra library: Q
 * inverted from the compliance, rotated by whole matrices T⁻¹ Q R T R⁻¹ with sine and cosine of θ itself, integrated
 * through the thickness by Gauss points, inverted by LU.
 */
class LaminateOracleTest {
    private static final int LAMINATES = 1000;
    /** Of the largest entry of each block. */
    private static final double TOLERANCE = 1e-12;

    private static final double GAUSS = 1 / Math.sqrt(3);

    @Test
    void stiffnessAgrees() {
        RandomLaminates.take(LAMINATES).forEach(laminate -> {
            close("A", laminate, laminate.membrane(), integral(laminate, z -> 1));
            RealMatrix coupling = integral(laminate, z -> z);
            double scale = laminate.membrane().scale() * laminate.thickness();
            assertThat(difference(laminate.coupling(), coupling)).isLessThan(TOLERANCE * scale);
            close("D", laminate, laminate.bending(), integral(laminate, z -> z * z));
        });
    }

    @Test
    void couplingOfUnsymmetricLaminatesAgreesToItsOwnScale() {
        RandomLaminates.take(LAMINATES)
                .filter(laminate ->
                        laminate.coupling().scale() > 0.01 * laminate.membrane().scale() * laminate.thickness())
                .forEach(laminate -> close("B", laminate, laminate.coupling(), integral(laminate, z -> z)));
    }

    @Test
    void inverseAgrees() {
        RandomLaminates.take(LAMINATES).forEach(laminate -> {
            Compliance inverse = laminate.compliance();
            RealMatrix expected = inverse(laminate);
            close("a", laminate, inverse.a(), expected.getSubMatrix(0, 2, 0, 2));
            double scale = Math.sqrt(inverse.a().scale() * inverse.d().scale());
            RealMatrix coupling = expected.getSubMatrix(0, 2, 3, 5);
            assertThat(difference(inverse.b(), coupling)).isLessThan(TOLERANCE * scale);
            close("d", laminate, inverse.d(), expected.getSubMatrix(3, 5, 3, 5));
        });
    }

    @Test
    void thermalResultantsAgree() {
        RandomLaminates.take(LAMINATES).forEach(laminate -> {
            double[] force = new double[3];
            double[] moment = new double[3];
            double[] heights = laminate.interfaces();
            for (int i = 0; i < laminate.plies().size(); i++) {
                double[] held = heldStress(laminate.plies().get(i));
                for (int j = 0; j < 3; j++) {
                    force[j] += held[j] * (heights[i + 1] - heights[i]);
                    moment[j] += held[j] * (heights[i + 1] * heights[i + 1] - heights[i] * heights[i]) / 2;
                }
            }
            Resultants actual = laminate.thermalResultants().orElseThrow();
            double scale = Math.max(Math.abs(force[0]), Math.abs(force[1]));
            close(actual.force(), force, TOLERANCE * scale);
            close(actual.moment(), moment, TOLERANCE * scale * laminate.thickness());
        });
    }

    private static void close(Vector3 actual, double[] expected, double allowed) {
        assertThat(Math.abs(actual.x() - expected[0])).isLessThan(allowed);
        assertThat(Math.abs(actual.y() - expected[1])).isLessThan(allowed);
        assertThat(Math.abs(actual.xy() - expected[2])).isLessThan(allowed);
    }

    private static void close(String block, Laminate laminate, Matrix3 actual, RealMatrix expected) {
        assertThat(difference(actual, expected)).as("%s of %s", block, laminate).isLessThan(TOLERANCE * actual.scale());
    }

    private static double difference(Matrix3 actual, RealMatrix expected) {
        RealMatrix difference = MatrixUtils.createRealMatrix(actual.rows()).subtract(expected);
        double largest = 0;
        for (double[] row : difference.getData()) {
            for (double entry : row) {
                largest = Math.max(largest, Math.abs(entry));
            }
        }
        return largest;
    }

    /** ∫ Q̄ f(z) dz with two Gauss points a ply, exact for f up to z³. */
    private static RealMatrix integral(Laminate laminate, DoubleUnaryOperator f) {
        RealMatrix sum = MatrixUtils.createRealMatrix(3, 3);
        double from = -laminate.plies().stream().mapToDouble(Ply::thickness).sum() / 2;
        for (Ply ply : laminate.plies()) {
            double half = ply.thickness() / 2;
            double middle = from + half;
            double weight = half * (f.applyAsDouble(middle - half * GAUSS) + f.applyAsDouble(middle + half * GAUSS));
            sum = sum.add(rotated(ply).scalarMultiply(weight));
            from += ply.thickness();
        }
        return sum;
    }

    private static RealMatrix rotated(Ply ply) {
        RealMatrix t = stressRotation(ply);
        RealMatrix r = MatrixUtils.createRealDiagonalMatrix(new double[] {1, 1, 2});
        RealMatrix s = compliance(ply.lamina());
        return invert(t).multiply(invert(s)).multiply(r).multiply(t).multiply(invert(r));
    }

    private static RealMatrix stressRotation(Ply ply) {
        double c = Math.cos(Math.toRadians(ply.angleDegrees()));
        double s = Math.sin(Math.toRadians(ply.angleDegrees()));
        return MatrixUtils.createRealMatrix(new double[][] {
            {c * c, s * s, 2 * s * c}, {s * s, c * c, -2 * s * c}, {-s * c, s * c, c * c - s * s}
        });
    }

    private static RealMatrix compliance(Lamina l) {
        double cross = -l.nu12() / l.E1();
        return MatrixUtils.createRealMatrix(new double[][] {
            {1 / l.E1(), cross, 0}, {cross, 1 / l.E2(), 0}, {0, 0, 1 / l.G12()}
        });
    }

    /** Q̄ ᾱ as the stress of the free strain in ply axes, turned back as a stress. */
    private static double[] heldStress(Ply ply) {
        Expansion alpha = ply.lamina().thermalExpansion().orElseThrow();
        double[] stress = invert(compliance(ply.lamina())).operate(new double[] {alpha.along(), alpha.across(), 0});
        return invert(stressRotation(ply)).operate(stress);
    }

    /** The 6×6 inverse by LU, made dimensionless by a modulus and the thickness. */
    private static RealMatrix inverse(Laminate laminate) {
        double h = laminate.thickness();
        double modulus = laminate.membrane().scale() / h;
        double[] unit = {1, 1, 1, h, h, h};
        RealMatrix k = MatrixUtils.createRealMatrix(6, 6);
        for (int i = 0; i < 6; i++) {
            for (int j = 0; j < 6; j++) {
                Matrix3 block = i < 3 && j < 3
                        ? laminate.membrane()
                        : i >= 3 && j >= 3 ? laminate.bending() : laminate.coupling();
                k.setEntry(i, j, block.get(i % 3, j % 3) / (modulus * h * unit[i] * unit[j]));
            }
        }
        RealMatrix inverse = invert(k);
        for (int i = 0; i < 6; i++) {
            for (int j = 0; j < 6; j++) {
                inverse.multiplyEntry(i, j, 1 / (modulus * h * unit[i] * unit[j]));
            }
        }
        return inverse;
    }

    private static RealMatrix invert(RealMatrix m) {
        return new LUDecomposition(m, 0).getSolver().getInverse();
    }
}
