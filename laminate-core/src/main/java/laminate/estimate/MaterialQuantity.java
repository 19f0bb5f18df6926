package laminate.estimate;

import java.util.OptionalDouble;
import laminate.unit.PriceBasis;
import laminate.unit.Unit;

/**
 * A material to buy, for all mouldings, in every measure that is known of it.
 *
 * @param material the id
 * @param kind what sort of material it is, in words
 * @param thickness thickness of the sheet of a core (m), empty for anything else
 * @param inPart what of it ends in the parts (kg)
 * @param mass mass to buy (kg)
 * @param area area to buy (m²)
 * @param length length off the roll (m)
 * @param rollWidth width of the roll (m)
 * @param volume volume to buy (m³)
 * @param pieces pieces to buy
 */
public record MaterialQuantity(
        String material,
        String kind,
        OptionalDouble thickness,
        double inPart,
        OptionalDouble mass,
        OptionalDouble area,
        OptionalDouble length,
        OptionalDouble rollWidth,
        OptionalDouble volume,
        OptionalDouble pieces) {

    /**
     * How much there is to buy by a measure.
     *
     * @param basis the measure
     * @return the amount in that measure; empty if this material is not known by it
     */
    public OptionalDouble amount(PriceBasis basis) {
        if (basis == PriceBasis.PIECE) {
            return pieces;
        }
        return basis.unit().isPresent() ? amount(basis.unit().get()) : OptionalDouble.empty();
    }

    private OptionalDouble amount(Unit unit) {
        OptionalDouble si = switch (unit.dimension()) {
            case MASS -> mass;
            case AREA -> area;
            case LENGTH -> length;
            case VOLUME -> volume;
            default -> OptionalDouble.empty();
        };
        return si.isPresent() ? OptionalDouble.of(unit.fromSi(si.getAsDouble())) : si;
    }

    /**
     * This and more of the same material.
     *
     * @param other what joins this
     * @return both together, by the measures known of either
     */
    public MaterialQuantity plus(MaterialQuantity other) {
        return new MaterialQuantity(
                material,
                kind,
                thickness,
                inPart + other.inPart,
                sum(mass, other.mass),
                sum(area, other.area),
                sum(length, other.length),
                rollWidth,
                sum(volume, other.volume),
                sum(pieces, other.pieces));
    }

    /**
     * So many times as much to buy, of which no more ends in the parts.
     *
     * @param factor how many times, from 0
     * @return the amounts times the factor
     */
    public MaterialQuantity toBuyTimes(double factor) {
        return new MaterialQuantity(
                material,
                kind,
                thickness,
                inPart,
                times(mass, factor),
                times(area, factor),
                times(length, factor),
                rollWidth,
                times(volume, factor),
                times(pieces, factor));
    }

    private static OptionalDouble times(OptionalDouble amount, double factor) {
        return amount.isPresent() ? OptionalDouble.of(amount.getAsDouble() * factor) : amount;
    }

    /** Pieces are bought whole; the little that sums leave over a whole number does not ask for one more. */
    MaterialQuantity inWholePieces() {
        OptionalDouble whole = pieces.isPresent() ? OptionalDouble.of(Math.ceil(pieces.getAsDouble() - 1e-9)) : pieces;
        return new MaterialQuantity(material, kind, thickness, inPart, mass, area, length, rollWidth, volume, whole);
    }

    private static OptionalDouble sum(OptionalDouble one, OptionalDouble other) {
        return one.isPresent() || other.isPresent()
                ? OptionalDouble.of(one.orElse(0) + other.orElse(0))
                : OptionalDouble.empty();
    }
}
