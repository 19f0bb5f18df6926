package laminate.theory.panel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixRMaj;

/**
 * An energy that is quadratic in the fields, ½ ∫∫ Σ c (∂f)(∂g) dx dy, and its matrix for a basis. As every function is
 * a product of one of x and one of y, so is every integral.
 */
final class Form {
    private final List<List<Addend>> byFields = new ArrayList<>();

    /** c × derivative (dx, dy) of the left field × derivative (ex, ey) of the right. */
    private record Addend(double c, int dx, int dy, int ex, int ey) {}

    private Form() {
        for (int i = 0; i < Field.values().length * Field.values().length; i++) {
            byFields.add(new ArrayList<>());
        }
    }

    private List<Addend> addends(Field left, Field right) {
        return byFields.get(left.ordinal() * Field.values().length + right.ordinal());
    }

    /** Strain energy. */
    static Form strainEnergy(Kinematics kinematics, Section section) {
        Form form = new Form();
        for (Kinematics.Term left : kinematics.terms()) {
            for (Kinematics.Term right : kinematics.terms()) {
                double c = left.factor() * right.factor() * section.get(left.row(), right.row());
                if (c != 0) {
                    form.addends(left.field(), right.field())
                            .add(new Addend(c, left.dx(), left.dy(), right.dx(), right.dy()));
                }
            }
        }
        return form;
    }

    /** Work of uniform forces in the plane on the shortening by deflection: ½ ∫∫ Nx w,x² + Ny w,y² + 2 Nxy w,x w,y. */
    static Form shortening(PanelLoad.EdgeForces n) {
        Form form = new Form();
        List<Addend> deflection = form.addends(Field.W, Field.W);
        deflection.add(new Addend(n.Nx(), 1, 0, 1, 0));
        deflection.add(new Addend(n.Ny(), 0, 1, 0, 1));
        deflection.add(new Addend(n.Nxy(), 1, 0, 0, 1));
        deflection.add(new Addend(n.Nxy(), 0, 1, 1, 0));
        return form;
    }

    /** The matrix of some of the unknowns of a basis, in the order of their powers. */
    Envelope envelope(Basis basis, int[] of) {
        Entries entries = entries(basis);
        double[][] rows = new double[of.length][];
        int[] first = new int[of.length];
        for (int i = 0; i < of.length; i++) {
            Basis.Unknown left = basis.unknown(of[i]);
            double[] row = new double[i + 1];
            first[i] = i;
            for (int j = i; j >= 0; j--) {
                Basis.Unknown right = basis.unknown(of[j]);
                if (basis.mayCouple(left, right)) {
                    row[j] = entries.of(left, right);
                    first[i] = row[j] == 0 ? first[i] : j;
                }
            }
            rows[i] = Arrays.copyOfRange(row, first[i], i + 1);
        }
        return new Envelope(rows, first);
    }

    /** The symmetric matrix of some of the unknowns of a basis. */
    DMatrixRMaj matrix(Basis basis, int[] of) {
        Entries entries = entries(basis);
        DMatrixRMaj matrix = new DMatrixRMaj(of.length, of.length);
        for (int i = 0; i < of.length; i++) {
            Basis.Unknown left = basis.unknown(of[i]);
            for (int j = 0; j <= i; j++) {
                double entry = entries.of(left, basis.unknown(of[j]));
                matrix.unsafe_set(i, j, entry);
                matrix.unsafe_set(j, i, entry);
            }
        }
        return matrix;
    }

    /** The entries of the matrix for a basis, one at a time. */
    Entries entries(Basis basis) {
        return new Entries(this, basis.alongX().products(), basis.alongY().products());
    }

    /** Entries of a matrix, with the integrals of each addend at hand. */
    static final class Entries {
        private final int fields = Field.values().length;
        private final Product[][] byFields = new Product[fields * fields][];

        private record Product(double c, double[][] alongX, double[][] alongY) {}

        private Entries(Form form, double[][][][] alongX, double[][][][] alongY) {
            for (int pair = 0; pair < byFields.length; pair++) {
                byFields[pair] = form.byFields.get(pair).stream()
                        .map(a -> new Product(a.c(), alongX[a.dx()][a.ex()], alongY[a.dy()][a.ey()]))
                        .toArray(Product[]::new);
            }
        }

        double of(Basis.Unknown left, Basis.Unknown right) {
            double entry = 0;
            for (Product p :
                    byFields[left.field().ordinal() * fields + right.field().ordinal()]) {
                entry += p.c() * p.alongX()[left.x()][right.x()] * p.alongY()[left.y()][right.y()];
            }
            return entry;
        }
    }
}
