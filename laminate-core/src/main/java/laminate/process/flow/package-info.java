/**
 * How resin flows through a bed of fibres under a bag: Darcy's law for the feeds of the workshop, flow mesh, hoses,
 * permeability, and a bed that gives way to the pressure.
 *
 * <p><b>Symbols.</b> K permeability (m²), μ viscosity (Pa·s), φ porosity, V fibre volume fraction, ΔP driving pressure
 * (Pa), L flow length from feed to front (m), t time (s), h thickness (m), p pressure of the resin above that of the vent
 * (Pa). Everything is in SI units. A position is measured along the way of the resin, 0 at the feed.
 *
 * <p><b>What is taken for granted.</b> The resin is Newtonian, its flow slow and saturated behind a sharp front; the
 * pressure at feed and front is constant; viscosity is the same everywhere at a time; capillary pressure is left out (150
 * to 225 Pa for glass mat and twill, <i>Composites A</i> 2019, doi 10.1016/j.compositesa.2019.105495: 0.2 % of a vacuum).
 * Formulas are exact under these; the permeability is what decides. Between laboratories it scatters by 32 to 44 %, within
 * one by 8 to 12 % (A. May and others, <i>Composites A</i> 2019, third in-plane benchmark), so that a fill time is good to
 * ±40 % at best.
 *
 * <p>A formula stands alone as a static method; {@link laminate.process.flow.Filling} puts them together. What no number
 * can hold is refused with an {@link IllegalArgumentException}; what never comes to pass is an empty result.
 *
 * <p><b>Literature</b> (cited from memory unless told otherwise):
 *
 * <ul>
 *   <li>H. Darcy, <i>Les fontaines publiques de la ville de Dijon</i>, 1856; the filling times follow from his law by one
 *       integration and are derived here.
 *   <li>K. L. Adams, W. B. Russel, L. Rebenfeld, Radial penetration of a viscous liquid into a planar anisotropic porous
 *       medium, <i>Int. J. Multiphase Flow</i> 14 (1988) 203.
 *   <li>K.-T. Hsiao, R. Mathur, S. G. Advani, J. W. Gillespie, B. K. Fink, A closed form solution for flow during the
 *       vacuum assisted resin transfer molding process, <i>J. Manuf. Sci. Eng.</i> 122 (2000) 463.
 *   <li>B. R. Gebart, Permeability of unidirectional reinforcements for RTM, <i>J. Compos. Mater.</i> 26 (1992) 1100.
 *   <li>F. Robitaille, R. Gauvin, Compaction of textile reinforcements for composites manufacturing I, <i>Polym.
 *       Compos.</i> 19 (1998) 198.
 *   <li>Kozeny 1927 and Carman 1937: permeability of a bed against its porosity.
 * </ul>
 */
package laminate.process.flow;
