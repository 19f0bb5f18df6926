/**
 * How a part or a zone of it is to be infused: where the resin enters and how far it has to run, what drives it, what it
 * runs through and what is left behind in hoses, mesh and pot.
 *
 * <p>These are the facts that a plan states; what follows from them (fill time, front, spacing of feed lines) is reckoned
 * elsewhere. Whatever the library or the layers tell already need not be stated.
 *
 * <p>Symbols: K permeability (m²), φ porosity (volume not filled with fibre, 1 − V<sub>f</sub>), μ viscosity (Pa·s), Δp
 * driving pressure (Pa), L flow length (m).
 */
package laminate.part.infusion;
