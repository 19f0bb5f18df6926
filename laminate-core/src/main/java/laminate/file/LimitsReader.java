package laminate.file;

import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.number;
import static laminate.file.Scalars.oneOf;
import static laminate.file.Scalars.orNone;
import static laminate.file.Scalars.quantity;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import laminate.part.DeflectionLimit;
import laminate.part.Limits;
import laminate.part.ReserveKind;
import laminate.unit.Dimension;

/** Reads what a file asks of a part, a zone, a panel or a beam. */
final class LimitsReader {

    private static final Pattern SHARE_OF_SPAN = Pattern.compile("1 */ *([1-9][0-9]*(\\.[0-9]+)?) +span");

    private LimitsReader() {}

    static Reading<Limits> limits() {
        return mapping(Keys.LIMITS, LimitsReader::limits);
    }

    private static Limits limits(Fields in) {
        var deflection = in.optional("deflection", new Deflection());
        var reserves = in.orElse("reserve-factor", reserves(), Map.<ReserveKind, Double>of());
        var thickness = in.optional("thickness", quantity(Dimension.LENGTH, Bounds.POSITIVE));
        var mass = in.optional("mass", quantity(Dimension.MASS, Bounds.POSITIVE));
        in.requireSound();
        return new Limits(deflection.get(), reserves.get(), orNone(thickness.get()), orNone(mass.get()));
    }

    private static Reading<Map<ReserveKind, Double>> reserves() {
        return new MapReading<>(oneOf(ReserveKind::word, ReserveKind.values()), number(Bounds.POSITIVE)) {
            @Override
            String wanted() {
                return "factors by kind of failure are wanted, as in {first-ply: 1.5}";
            }
        };
    }

    /** A length, or a share as in 1/100 span. */
    private static final class Deflection implements Reading<DeflectionLimit> {

        private static final Reading<Double> LENGTH = quantity(Dimension.LENGTH, Bounds.POSITIVE);

        private static final Reading<DeflectionLimit> SHARE = new ScalarReading<>() {
            @Override
            DeflectionLimit of(String text) {
                return shareOfSpan(text);
            }
        };

        @Override
        public Optional<DeflectionLimit> read(Node node, Complaints complaints) {
            if (node instanceof Node.Scalar scalar && isOfSpan(scalar.text())) {
                return SHARE.read(node, complaints);
            }
            Optional<Double> length = LENGTH.read(node, complaints);
            return length.isPresent() ? Optional.of(DeflectionLimit.of(length.get())) : Optional.empty();
        }

        private static boolean isOfSpan(String text) {
            return text.contains("span") || text.contains("/") || text.contains(":");
        }
    }

    private static DeflectionLimit shareOfSpan(String text) {
        Matcher share = SHARE_OF_SPAN.matcher(text);
        if (!share.matches()) {
            throw new IllegalArgumentException(Complaints.shown(text)
                    + " is no deflection; a share such as 1/100 span or a length such as 4 mm is accepted");
        }
        double parts = Double.parseDouble(share.group(1));
        if (!(parts > 1)) {
            throw new IllegalArgumentException(
                    Complaints.shown(text) + " is the span or more; a share such as 1/100 span is accepted");
        }
        return DeflectionLimit.ofSpan(parts);
    }
}
