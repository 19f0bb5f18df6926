/**
 * Lamina, ply and laminate: stiffness, expansion and engineering constants; micromechanics and mixture laws.
 *
 * <p><b>Conventions.</b> Plies are listed in the order they are laid, mould face first. z = 0 at mid-plane,
 * z = −h/2 at the mould face. Angles are in degrees from x towards y and turn the fibre direction 1. Shear strain
 * is engineering strain γ. Curvature κ = −w,xx and κxy = −2 w,xy, so that ε(z) = ε0 + z κ and
 *
 * <pre>
 *   [N; M] + [NT; MT] = [[A, B], [B, D]] [ε0; κ],   NT = ∫ Q̄ α ΔT dz,   σ = Q̄ (ε − α ΔT)
 * </pre>
 *
 * <p>and the same for moisture with β and the moisture content c. Everything is in SI units (m, kg, Pa, N, K);
 * fractions are pure numbers between 0 and 1. Angles that are multiples of 45° are exact: a cross-ply laminate has
 * A16 = 0.0 and not a rounding error; a symmetric one has B = 0.0.
 *
 * <p>All types are immutable and safe to share between threads. A value that cannot be is refused with an
 * {@link java.lang.IllegalArgumentException} that shows it.
 *
 * <p><b>Literature</b> (all cited from memory):
 *
 * <ul>
 *   <li>R. M. Jones, <i>Mechanics of Composite Materials</i>, 2nd ed., 1999.
 *   <li>A. K. Kaw, <i>Mechanics of Composite Materials</i>, 2nd ed., 2006.
 *   <li>S. W. Tsai and H. T. Hahn, <i>Introduction to Composite Materials</i>, 1980.
 *   <li>S. W. Tsai and N. J. Pagano, Invariant properties of composite materials, in <i>Composite Materials
 *       Workshop</i>, 1968.
 *   <li>J. C. Halpin and J. L. Kardos, The Halpin–Tsai equations: a review, <i>Polym. Eng. Sci.</i> 16 (1976) 344.
 *   <li>R. A. Schapery, Thermal expansion coefficients of composite materials based on energy principles,
 *       <i>J. Compos. Mater.</i> 2 (1968) 380.
 *   <li>M. Manera, Elastic properties of randomly oriented short fiber–glass composites, <i>J. Compos. Mater.</i>
 *       11 (1977) 235.
 *   <li>A. Kelly and W. R. Tyson, Tensile properties of fibre-reinforced metals, <i>J. Mech. Phys. Solids</i> 13 (1965)
 *       329; J. Aveston, G. A. Cooper and A. Kelly, Single and multiple fracture, in <i>The Properties of Fibre
 *       Composites</i>, 1971.
 *   <li>D. Hull and T. W. Clyne, <i>An Introduction to Composite Materials</i>, 2nd ed., 1996.
 *   <li>B. Budiansky and N. A. Fleck, Compressive failure of fibre composites, <i>J. Mech. Phys. Solids</i> 41 (1993)
 *       183; with A. S. Argon, 1972, and B. Budiansky, 1983, before it.
 *   <li>C. C. Chamis, Simplified composite micromechanics equations for hygral, thermal and mechanical properties, NASA
 *       TM-83320, 1983.
 *   <li>F. Stassi-D'Alia, Flow and fracture of materials according to a new limiting condition of yielding,
 *       <i>Meccanica</i> 2 (1967) 178.
 *   <li>J. K. Lees, A study of the tensile strength of short fiber reinforced plastics, <i>Polym. Eng. Sci.</i> 8 (1968)
 *       195; P. E. Chen, Strength properties of discontinuous fiber composites, <i>Polym. Eng. Sci.</i> 11 (1971) 51.
 *   <li>P. D. Soden, M. J. Hinton and A. S. Kaddour, Lamina properties, lay-up configurations and loading conditions for
 *       a range of fibre-reinforced composite laminates, <i>Compos. Sci. Technol.</i> 58 (1998) 1011.
 *   <li>ISO 12215-5:2008, Small craft: hull construction and scantlings, part 5.
 *   <li>ASTM D2734, void content of reinforced plastics; ASTM D3171, constituent content, method II.
 * </ul>
 */
package laminate.theory;
