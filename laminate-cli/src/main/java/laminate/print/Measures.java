package laminate.print;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import laminate.process.Range;
import laminate.theory.LaminateLoad.Term;
import laminate.unit.Dimension;
import laminate.unit.Significant;
import laminate.unit.Unit;
import laminate.unit.UnitSystem;

/**
 * Numbers for a reader, in the units the reader is used to, to three significant figures.
 *
 * @param system the reader's units
 */
public record Measures(UnitSystem system) {
    /** The significant figures that a reader is told. */
    public static final int FIGURES = 3;

    /** Figures from here on are rounding of the computer. */
    private static final int NOISE = 9;

    /** Decimals of an amount that a scale shows. */
    private static final int MOST_DECIMALS = 2;

    /** Figures in which fresh water is told from salt. */
    private static final int DENSITY_FIGURES = 4;

    /** What is this small a part of the largest number beside it is less than that number's last figure. */
    private static final double ROUNDING = 5e-4;

    /** A reserve factor from here on says that nothing is near. */
    private static final double AMPLE = 1e4;

    /**
     * A bare number.
     *
     * @param value the number, finite
     * @return its text
     */
    public static String number(double value) {
        return Significant.format(value, FIGURES);
    }

    /**
     * A bare number, rounded away from another, so that what must reach or stay below it does when it is taken as told.
     *
     * @param value the number, finite
     * @param other the number from which it is rounded away
     * @return its text
     */
    public static String numberBeyond(double value, double other) {
        RoundingMode away = value > other ? RoundingMode.CEILING : RoundingMode.FLOOR;
        BigDecimal rounded = new BigDecimal(Significant.format(value, NOISE)).round(new MathContext(FIGURES, away));
        return Significant.format(rounded.doubleValue(), FIGURES);
    }

    /**
     * Two numbers with as many figures as it takes to tell them apart, three at least.
     *
     * @param one a number, finite
     * @param other another
     * @return their texts
     */
    public static List<String> apart(double one, double other) {
        int figures = FIGURES;
        while (figures < NOISE && Significant.format(one, figures).equals(Significant.format(other, figures))) {
            figures++;
        }
        return List.of(Significant.format(one, figures), Significant.format(other, figures));
    }

    /**
     * A whole number as it is, any other to three figures.
     *
     * @param value the number, finite
     * @return its text
     */
    public static String count(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9 ? Long.toString((long) value) : number(value);
    }

    /**
     * A number that was set and not computed, as it was set: 1265 and not 1270, 18 and not 18.0.
     *
     * @param value the number, finite
     * @return its text without the noise of conversion
     */
    public static String plain(double value) {
        BigDecimal decimal = new BigDecimal(Significant.format(value, NOISE));
        return decimal.signum() == 0 ? "0" : decimal.stripTrailingZeros().toPlainString();
    }

    /**
     * A value that was set and not computed, with its unit.
     *
     * @param si the value (SI)
     * @param unit the unit
     * @return the text
     */
    public static String plain(double si, Unit unit) {
        return plain(unit.fromSi(si)) + " " + unit.symbol();
    }

    /**
     * The numbers of a column that were set and not computed, all with as many decimals as one of them needs, two at most,
     * three in ounces.
     *
     * @param values the values (SI)
     * @param unit the unit
     * @return a text for each, without the unit
     */
    public static List<String> column(List<Double> values, Unit unit) {
        int decimals = 0;
        List<BigDecimal> numbers = new ArrayList<>();
        for (double value : values) {
            BigDecimal number = new BigDecimal(plain(unit.fromSi(value)));
            numbers.add(number);
            decimals = Math.max(decimals, Math.min(mostDecimals(unit), number.scale()));
        }
        List<String> texts = new ArrayList<>();
        for (BigDecimal number : numbers) {
            texts.add(number.setScale(decimals, RoundingMode.HALF_UP).toPlainString());
        }
        return texts;
    }

    /** A hundredth of an ounce is more than a dose of catalyst may be off. */
    private static int mostDecimals(Unit unit) {
        return unit == Unit.OUNCES ? MOST_DECIMALS + 1 : MOST_DECIMALS;
    }

    /**
     * The number of a value in a unit.
     *
     * @param si the value (SI)
     * @param unit the unit
     * @return the text, without the unit
     */
    public static String number(double si, Unit unit) {
        return number(unit.fromSi(si));
    }

    /**
     * The number of a value that may not be known.
     *
     * @param si the value (SI)
     * @param unit the unit
     * @return the text without the unit, empty where there is no value
     */
    public static String number(OptionalDouble si, Unit unit) {
        return si.isPresent() ? number(si.getAsDouble(), unit) : "";
    }

    /**
     * The number of a value beside others, of which it may be so small a part as to be nothing but rounding.
     *
     * @param largest the largest of them (SI)
     * @param si the value (SI)
     * @param unit the unit
     * @return the text without the unit
     */
    public static String beside(double largest, double si, Unit unit) {
        return Math.abs(si) <= ROUNDING * Math.abs(largest) ? "0" : number(si, unit);
    }

    /**
     * A reserve factor.
     *
     * @param factor the factor
     * @return its text
     */
    public static String reserve(double factor) {
        return factor < AMPLE ? number(factor) : "over 9999";
    }

    /**
     * A number that says nothing where it is zero.
     *
     * @param si the value (SI)
     * @param unit the unit
     * @return the text without the unit, empty for zero
     */
    public static String unlessZero(double si, Unit unit) {
        return si == 0 ? "" : number(si, unit);
    }

    /**
     * A fraction in per cent.
     *
     * @param fraction the fraction
     * @return the text without the sign of per cent
     */
    public static String percent(double fraction) {
        return number(fraction, Unit.PERCENT);
    }

    /**
     * A value with its unit.
     *
     * @param si the value (SI)
     * @param unit the unit
     * @return the text
     */
    public static String text(double si, Unit unit) {
        return number(si, unit) + " " + unit.symbol();
    }

    /**
     * A planned value, and between which bounds it may stray.
     *
     * @param range the value (SI)
     * @param unit the unit
     * @return the text with the unit
     */
    public static String text(Range range, Unit unit) {
        String planned = text(range.planned(), unit);
        return range.least() == range.most() ? planned : planned + " (" + bounds(range, unit) + ")";
    }

    /**
     * The bounds of a range.
     *
     * @param range the range (SI)
     * @param unit the unit
     * @return the text without the unit
     */
    public static String bounds(Range range, Unit unit) {
        return number(range.least(), unit) + " to " + number(range.most(), unit);
    }

    /**
     * A length with its unit, which zero does not need.
     *
     * @param metres the length (m)
     * @return the text
     */
    public String size(double metres) {
        return metres == 0 ? "0" : text(metres, length());
    }

    /**
     * The two parts of a deflection other than zero, and the share of the second.
     *
     * @param bending the part of bending (m)
     * @param shear the part of shear (m)
     * @param total both together (m)
     * @return the text
     */
    public String parts(double bending, double shear, double total) {
        return "bending " + size(Math.abs(bending)) + ", shear " + size(Math.abs(shear)) + " (" + percent(shear / total)
                + " %)";
    }

    /**
     * Of a thickness or another short length.
     *
     * @return the unit in the reader's system
     */
    public Unit length() {
        return system.unit(Dimension.LENGTH);
    }

    /**
     * Of a length on the shop floor.
     *
     * @return the unit in the reader's system
     */
    public Unit longLength() {
        return system.large(Dimension.LENGTH);
    }

    /**
     * Of an area.
     *
     * @return the unit in the reader's system
     */
    public Unit area() {
        return system.unit(Dimension.AREA);
    }

    /**
     * Of a mass.
     *
     * @return the unit in the reader's system
     */
    public Unit mass() {
        return system.unit(Dimension.MASS);
    }

    /**
     * Of a small mass, as a scale for catalyst shows it.
     *
     * @return the unit in the reader's system
     */
    public Unit smallMass() {
        return system.small(Dimension.MASS);
    }

    /**
     * Of a volume.
     *
     * @return the unit in the reader's system
     */
    public Unit volume() {
        return system.unit(Dimension.VOLUME);
    }

    /**
     * Of a small volume, as a measuring cup shows it.
     *
     * @return the unit in the reader's system
     */
    public Unit smallVolume() {
        return system.small(Dimension.VOLUME);
    }

    /**
     * Of an areal weight.
     *
     * @return the unit in the reader's system
     */
    public Unit arealMass() {
        return system.unit(Dimension.AREAL_MASS);
    }

    /**
     * Of a modulus.
     *
     * @return the unit in the reader's system
     */
    public Unit modulus() {
        return system.unit(Dimension.PRESSURE);
    }

    /**
     * Of a thermal expansion, in millionths of strain.
     *
     * @return the unit in the reader's system
     */
    public Unit expansion() {
        return system.unit(Dimension.EXPANSION);
    }

    /**
     * Of a force per width.
     *
     * @return the unit in the reader's system
     */
    public Unit forcePerLength() {
        return system.unit(Dimension.FORCE_PER_LENGTH);
    }

    /**
     * Of a force.
     *
     * @return the unit in the reader's system
     */
    public Unit force() {
        return system.unit(Dimension.FORCE);
    }

    /**
     * Of a stress or strength, beside which a modulus is large.
     *
     * @return the unit in the reader's system
     */
    public Unit stress() {
        return system.small(Dimension.PRESSURE);
    }

    /**
     * Of a pressure on a panel, beside which a stress is large.
     *
     * @return the unit in the reader's system
     */
    public Unit pressure() {
        return system == UnitSystem.US ? Unit.PSIS : Unit.KILOPASCAL;
    }

    /**
     * Of a moment per width.
     *
     * @return the unit in the reader's system
     */
    public Unit momentPerLength() {
        return system.unit(Dimension.MOMENT_PER_LENGTH);
    }

    /**
     * Of a curvature.
     *
     * @return the unit in the reader's system
     */
    public Unit curvature() {
        return system.unit(Dimension.CURVATURE);
    }

    /**
     * Of a temperature.
     *
     * @return the unit in the reader's system
     */
    public Unit temperature() {
        return system.unit(Dimension.TEMPERATURE);
    }

    /**
     * Of a change of temperature.
     *
     * @return the unit in the reader's system
     */
    public Unit temperatureDifference() {
        return system.unit(Dimension.TEMPERATURE_DIFFERENCE);
    }

    /**
     * Of a density.
     *
     * @return the unit in the reader's system
     */
    public Unit density() {
        return system.unit(Dimension.DENSITY);
    }

    /**
     * A density of a liquid with its unit.
     *
     * @param si the density (kg/m³)
     * @return the text
     */
    public String liquid(double si) {
        return Significant.format(density().fromSi(si), DENSITY_FIGURES) + " "
                + density().symbol();
    }

    /**
     * The unit of a load or deformation of a laminate.
     *
     * @param term the load or deformation
     * @return the unit in the reader's system
     */
    public Unit of(Term term) {
        return switch (term) {
            case NX, NY, NXY -> forcePerLength();
            case MX, MY, MXY -> momentPerLength();
            case EPS_X, EPS_Y, GAMMA_XY -> Unit.PERCENT;
            case KAPPA_X, KAPPA_Y, KAPPA_XY -> curvature();
        };
    }

    /**
     * The unit of a bending stiffness per width, E I/b.
     *
     * @return its symbol
     */
    public String bendingStiffnessUnit() {
        return system == UnitSystem.US ? "lbf·in" : "N·m";
    }

    /**
     * A bending stiffness per width in {@link #bendingStiffnessUnit()}.
     *
     * @param si the stiffness (N·m)
     * @return the text without the unit
     */
    public String bendingStiffness(double si) {
        return number(bendingStiffnessNumber(si));
    }

    /**
     * A bending stiffness per width in {@link #bendingStiffnessUnit()}.
     *
     * @param si the stiffness (N·m)
     * @return the number with all its digits
     */
    public double bendingStiffnessNumber(double si) {
        return system == UnitSystem.US ? si / (Unit.POUNDS_FORCE.factor() * Unit.INCHES.factor()) : si;
    }

    /**
     * A difference in per cent with its sign.
     *
     * @param share the difference by what it is a difference to; 0.12 for 12 % more
     * @return the text without the sign of per cent, empty where there is none
     */
    public static String difference(OptionalDouble share) {
        if (share.isEmpty()) {
            return "";
        }
        String text = percent(share.getAsDouble());
        return share.getAsDouble() > 0 ? "+" + text : text;
    }
}
