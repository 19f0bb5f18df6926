/**
 * How a part is made: fibre content by process, the thickness and resin that follow from it, voids, what a core takes
 * up, what is lost on the way, labour and consumables; and the workshop, which may override any of it.
 *
 * <p>Symbols: w dry fibre mass per area (kg/m²), ψ fibre mass fraction, V<sub>f</sub> fibre volume fraction,
 * V<sub>v</sub> void volume fraction, ρ<sub>f</sub> and ρ<sub>r</sub> densities of fibre and cured resin (kg/m³), t
 * thickness (m).
 */
package laminate.process;
