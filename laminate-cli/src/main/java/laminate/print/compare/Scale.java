package laminate.print.compare;

import laminate.compare.Measure;
import laminate.print.Measures;
import laminate.unit.Unit;

/**
 * In which unit a figure is told.
 *
 * @param measures the reader's units
 */
record Scale(Measures measures) {

    /** The symbol of the unit, empty text for a bare number. */
    String symbol(Measure measure) {
        return switch (measure) {
            case BENDING_STIFFNESS_X, BENDING_STIFFNESS_Y -> measures.bendingStiffnessUnit();
            case RESERVE_FACTOR -> "";
            default -> unit(measure).symbol();
        };
    }

    /** The number in that unit with all its digits. */
    double number(Measure measure, double si) {
        return switch (measure) {
            case BENDING_STIFFNESS_X, BENDING_STIFFNESS_Y -> measures.bendingStiffnessNumber(si);
            case RESERVE_FACTOR -> si;
            default -> unit(measure).fromSi(si);
        };
    }

    /** The number as it is read. */
    String text(Measure measure, double si) {
        return measure == Measure.RESERVE_FACTOR ? Measures.reserve(si) : Measures.number(number(measure, si));
    }

    private Unit unit(Measure measure) {
        return switch (measure) {
            case MEAN_THICKNESS, THICKNESS, DEFLECTION -> measures.length();
            case MASS, FIBRE, RESIN_IN_PART, RESIN_TO_MIX, RESIN_WASTE, SHEET_WASTE -> measures.mass();
            case MASS_PER_AREA -> measures.arealMass();
            case FIBRE_MASS_FRACTION, FIBRE_VOLUME_FRACTION, VOID_FRACTION -> Unit.PERCENT;
            case STYRENE -> measures.smallMass();
            case TIME -> Unit.HOURS;
            case BENDING_MODULUS_X, BENDING_MODULUS_Y -> measures.modulus();
            case BENDING_STIFFNESS_X, BENDING_STIFFNESS_Y, RESERVE_FACTOR ->
                throw new IllegalArgumentException(measure + " has no unit of its own");
        };
    }
}
