/**
 * Quantities at the edge of the library: text with units in, SI numbers inside, rounded text out.
 *
 * <p>This is the only package that knows that a mat is sold by the ounce per square foot. Everywhere else a number is
 * a plain SI {@code double} whose unit stands in its documentation. Two conventions are worth knowing:
 *
 * <ul>
 *   <li>An angle stays in degrees, because 45° and 90° must stay exact; see {@link laminate.unit.Dimension#ANGLE}.
 *   <li>What a person wrote in decimal is converted in decimal and rounded once, so {@code 3.1 mm} is the
 *       {@code double} nearest to 0.0031 m, and {@code 20 °C} comes back from kelvin as 20.
 * </ul>
 *
 * <p>Text that is refused is refused with a {@link laminate.unit.QuantityException}, whose message says what is wrong
 * and what is accepted, and which knows the place in the text. Money is {@link java.math.BigDecimal} with its currency.
 *
 * <p>Sources of the factors, all from memory:
 *
 * <ul>
 *   <li>BIPM, The International System of Units (SI), 9th edition, 2019: SI units, prefixes, litre, minute, hour, day.
 *   <li>International yard and pound agreement, 1959: 1 yd = 0.9144 m, 1 lb = 0.45359237 kg, both exact.
 *   <li>3rd General Conference on Weights and Measures, 1901: standard gravity 9.80665 m/s², exact.
 *   <li>NIST Special Publication 811, 2008, appendix B: US gallon of 231 in³, US fluid ounce, bar, mil, °F.
 * </ul>
 */
package laminate.unit;
