/**
 * How a resin cures: gel time by temperature, dose and mass of the mix, heat and its rise of temperature, viscosity, and
 * the styrene given off meanwhile.
 *
 * <p>Symbols: T temperature (K), t time (s), E<sub>a</sub> activation energy (J/mol), R gas constant (J/(mol·K)), μ
 * viscosity (Pa·s), ψ fibre mass fraction, H heat of cure (J/kg of resin), c specific heat (J/(kg·K)), ρ density
 * (kg/m³), h thickness (m).
 *
 * <p>Gel times are scattered: 12 to 20 % either way within one batch chart, more between batches. A cup test of the batch
 * at hand, at the workshop's temperature, is worth more than any of these figures.
 */
package laminate.process.cure;
