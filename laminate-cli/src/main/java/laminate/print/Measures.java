package laminate.print;

import java.util.OptionalDouble;
import laminate.process.Range;
import laminate.unit.Dimension;
import laminate.unit.Significant;
import laminate.unit.Unit;
import laminate.unit.UnitSystem;

/**
 * Numbers for a reader, in the units the reader is used to, to three significant figures.
 *
 * @param system the reader's units
 */
record Measures(UnitSystem system) {
    private static final int FIGURES = 3;

    /** A bare number. */
    static String number(double value) {
        return Significant.format(value, FIGURES);
    }

    /** A whole number as it is, any other to three figures. */
    static String count(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9 ? Long.toString((long) value) : number(value);
    }

    /** The number of a value in a unit. */
    static String number(double si, Unit unit) {
        return number(unit.fromSi(si));
    }

    static String number(OptionalDouble si, Unit unit) {
        return si.isPresent() ? number(si.getAsDouble(), unit) : "";
    }

    /** A number that says nothing where it is zero. */
    static String unlessZero(double si, Unit unit) {
        return si == 0 ? "" : number(si, unit);
    }

    static String percent(double fraction) {
        return number(fraction, Unit.PERCENT);
    }

    /** A value with its unit. */
    static String text(double si, Unit unit) {
        return number(si, unit) + " " + unit.symbol();
    }

    /** A planned value, and between which bounds it may stray. */
    static String text(Range range, Unit unit) {
        String planned = text(range.planned(), unit);
        return range.least() == range.most() ? planned : planned + " (" + bounds(range, unit) + ")";
    }

    /** The bounds of a range without unit. */
    static String bounds(Range range, Unit unit) {
        return number(range.least(), unit) + " to " + number(range.most(), unit);
    }

    Unit length() {
        return system.unit(Dimension.LENGTH);
    }

    Unit longLength() {
        return system.large(Dimension.LENGTH);
    }

    Unit area() {
        return system.unit(Dimension.AREA);
    }

    Unit mass() {
        return system.unit(Dimension.MASS);
    }

    Unit smallMass() {
        return system.small(Dimension.MASS);
    }

    Unit volume() {
        return system.unit(Dimension.VOLUME);
    }

    Unit smallVolume() {
        return system.small(Dimension.VOLUME);
    }

    Unit arealMass() {
        return system.unit(Dimension.AREAL_MASS);
    }

    Unit modulus() {
        return system.unit(Dimension.PRESSURE);
    }

    /** In millionths of strain. */
    Unit expansion() {
        return system.unit(Dimension.EXPANSION);
    }

    Unit forcePerLength() {
        return system.unit(Dimension.FORCE_PER_LENGTH);
    }

    Unit force() {
        return system.unit(Dimension.FORCE);
    }

    /** The unit of a bending stiffness per width, E I/b. */
    String bendingStiffnessUnit() {
        return system == UnitSystem.US ? "lbf·in" : "N·m";
    }

    /** A bending stiffness per width (N·m) in {@link #bendingStiffnessUnit()}. */
    String bendingStiffness(double si) {
        double one = system == UnitSystem.US ? Unit.POUNDS_FORCE.factor() * Unit.INCHES.factor() : 1;
        return number(si / one);
    }
}
