/**
 * Rectangular laminated panels: deflection, moments and shear under pressure, large deflection and buckling.
 *
 * <p><b>Conventions.</b> The origin is a corner; x runs along the length from 0, y along the width from 0. Positive
 * pressure acts on the mould face (z = −h/2) towards +z, and deflection w is positive that way. Rotations φx, φy turn
 * so that u(z) = u + z φx; for a panel stiff in shear φx = −w,x, so that κx = φx,x = −w,xx as everywhere in the
 * house. Shear strains are γxz = w,x + φx, γyz = w,y + φy; shear forces Q are positive with them.
 *
 * <p><b>Theory.</b> First-order shear theory (E. Reissner, J. Appl. Mech. 12 (1945) A69; R. D. Mindlin, J. Appl. Mech.
 * 18 (1951) 31) with the transverse shear stiffness from the equilibrium shear stress, solved by the Ritz method with
 * hierarchical polynomials. Linear elastic; not a class approval.
 *
 * <p><b>Literature</b> (all cited from memory):
 *
 * <ul>
 *   <li>S. P. Timoshenko and S. Woinowsky-Krieger, <i>Theory of Plates and Shells</i>, 2nd ed., 1959.
 *   <li>S. P. Timoshenko and J. M. Gere, <i>Theory of Elastic Stability</i>, 2nd ed., 1961.
 *   <li>J. N. Reddy, <i>Mechanics of Laminated Composite Plates and Shells</i>, 2nd ed., 2004.
 *   <li>J. M. Whitney, <i>Structural Analysis of Laminated Anisotropic Plates</i>, 1987.
 *   <li>B. Szabó and I. Babuška, <i>Finite Element Analysis</i>, 1991 (the hierarchical polynomials).
 * </ul>
 */
package laminate.theory.panel;
