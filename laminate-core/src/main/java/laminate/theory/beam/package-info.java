/**
 * Beams and strips cut from a laminate: moments, shear forces and deflection with its bending and shear parts.
 *
 * <p><b>Conventions.</b> x runs along the beam from 0 to the span L, which is the laminate's x. Loads and the deflection
 * w are positive towards +z, that is from the mould face inwards. M' = V, V' = −q, κ = M/EI = −w,xx of the bending part,
 * γ = V/S of the shear part, so a beam on two supports pushed towards +z has positive w and positive moment at its
 * middle. Everything is in SI units.
 *
 * <p>Linear, small deflection, plane sections (Timoshenko). A clamp holds the section from turning; it does not hold the
 * shear slope. What no number can hold is refused with an {@link IllegalArgumentException}. Local effects under a load
 * or a support are in {@link laminate.theory.sandwich}.
 *
 * <p><b>Literature</b> (all cited from memory):
 *
 * <ul>
 *   <li>H. G. Allen, <i>Analysis and Design of Structural Sandwich Panels</i>, 1969.
 *   <li>D. Zenkert, <i>An Introduction to Sandwich Construction</i>, 1995.
 *   <li>J. M. Whitney, <i>Structural Analysis of Laminated Anisotropic Plates</i>, 1987: cylindrical bending.
 *   <li>S. P. Timoshenko and J. M. Gere, <i>Mechanics of Materials</i>, 1972.
 * </ul>
 */
package laminate.theory.beam;
