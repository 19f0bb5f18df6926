package laminate.file;

import static laminate.file.Scalars.number;
import static laminate.file.Scalars.quantity;

import java.util.Optional;
import laminate.unit.Dimension;

/** Strains as files state them: a bare number, or per cent. */
final class Strains {

    private Strains() {}

    /** A strain of a sign; what is beyond one half is most likely meant in millionths. */
    static Reading<Double> strain() {
        return within(Bounds.between(-0.5, 0.5, "-50 % to 50 %"));
    }

    /** A strain at which a ply fails. */
    static Reading<Double> limit() {
        return within(Bounds.above(0, 0.5, "above 0 % and up to 50 %"));
    }

    private static Reading<Double> within(Bounds range) {
        Reading<Double> bare = number(range);
        Reading<Double> percent = quantity(Dimension.FRACTION, range);
        return new Strain(bare, percent);
    }

    private record Strain(Reading<Double> bare, Reading<Double> percent) implements Reading<Double> {

        @Override
        public Optional<Double> read(Node node, Complaints complaints) {
            boolean inPercent =
                    node instanceof Node.Scalar scalar && scalar.text().indexOf('%') >= 0;
            return (inPercent ? percent : bare).read(node, complaints);
        }
    }
}
