package laminate.theory.panel;

import java.util.ArrayList;
import java.util.List;

/**
 * How strain follows from the fields. The rows of strain are εx, εy, γxy, κx, κy, κxy, γxz, γyz, each a sum of
 * derivatives of fields.
 */
enum Kinematics {
    /** First-order shear theory: κx = φx,x, κy = φy,y, κxy = φx,y + φy,x, γxz = w,x + φx, γyz = w,y + φy. */
    FIRST_ORDER(
            List.of(
                    new Term(3, Field.PHI_X, 1, 0, 1),
                    new Term(4, Field.PHI_Y, 0, 1, 1),
                    new Term(5, Field.PHI_X, 0, 1, 1),
                    new Term(5, Field.PHI_Y, 1, 0, 1),
                    new Term(6, Field.W, 1, 0, 1),
                    new Term(6, Field.PHI_X, 0, 0, 1),
                    new Term(7, Field.W, 0, 1, 1),
                    new Term(7, Field.PHI_Y, 0, 0, 1)),
            List.of(Field.U, Field.V, Field.W, Field.PHI_X, Field.PHI_Y)),
    /** Thin-plate theory, rigid in shear: κx = −w,xx, κy = −w,yy, κxy = −2 w,xy. */
    THIN(
            List.of(new Term(3, Field.W, 2, 0, -1), new Term(4, Field.W, 0, 2, -1), new Term(5, Field.W, 1, 1, -2)),
            List.of(Field.U, Field.V, Field.W));

    /** Number of rows of strain. */
    static final int ROWS = 8;

    private final List<Term> terms;
    private final List<Field> fields;

    Kinematics(List<Term> bending, List<Field> fields) {
        terms = new ArrayList<>(bending);
        terms.addAll(membrane());
        this.fields = fields;
    }

    /** Membrane strain, the same in both: εx = u,x, εy = v,y, γxy = u,y + v,x. */
    private static List<Term> membrane() {
        return List.of(
                new Term(0, Field.U, 1, 0, 1),
                new Term(1, Field.V, 0, 1, 1),
                new Term(2, Field.U, 0, 1, 1),
                new Term(2, Field.V, 1, 0, 1));
    }

    List<Term> terms() {
        return terms;
    }

    List<Field> fields() {
        return fields;
    }

    /** One addend of a row of strain: factor × derivative of a field, dx times by x and dy times by y. */
    record Term(int row, Field field, int dx, int dy, double factor) {}
}
