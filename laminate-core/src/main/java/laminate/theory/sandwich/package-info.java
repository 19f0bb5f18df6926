/**
 * Sandwiches: which plies of a laminate are faces and core, the classical formulas of the board, and the local failures
 * that laminate theory does not see: wrinkling, dimpling, shear crimping, crushing and indentation.
 *
 * <p><b>Symbols.</b> b width, L span, t thickness of a face, c of the core, h of all, d between the middles of the faces;
 * Ef modulus of a face in the direction of its stress, Ec of the core through the thickness (Pa), Gc shear modulus of
 * the core in the plane of stress and thickness. Everything is in SI units. Critical stresses are positive and meant for
 * compression.
 *
 * <p>A formula stands alone as a static method; {@link laminate.theory.sandwich.LocalChecks} applies it to a face of a
 * laminate. A reserve factor multiplies the mechanical load; residual stress is left out of these checks. A result too
 * large for a number is refused as an argument out of range is.
 *
 * <p><b>Literature</b> (all cited from memory):
 *
 * <ul>
 *   <li>H. G. Allen, <i>Analysis and Design of Structural Sandwich Panels</i>, 1969.
 *   <li>N. J. Hoff and S. E. Mautner, The buckling of sandwich-type panels, <i>J. Aeronaut. Sci.</i> 12 (1945) 285.
 *   <li>R. T. Sullins, G. W. Smith, E. E. Spier, Manual for structural stability analysis of sandwich plates and shells,
 *       NASA CR-1457, 1969.
 *   <li>ASTM C393-00, Flexural properties of sandwich constructions.
 *   <li>D. Zenkert, <i>An Introduction to Sandwich Construction</i>, 1995.
 *   <li>P. D. Soden, Indentation of composite sandwich beams, <i>J. Strain Anal.</i> 31 (1996) 353.
 *   <li>M. F. Ashby, A. G. Evans, N. A. Fleck and others, <i>Metal Foams: A Design Guide</i>, 2000, ch. 10.
 *   <li>M. Hetényi, <i>Beams on Elastic Foundation</i>, 1946.
 *   <li>ISO 12215-5:2008, Small craft: hull construction and scantlings, part 5.
 * </ul>
 */
package laminate.theory.sandwich;
