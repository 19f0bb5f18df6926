/**
 * What breaks first, in which way, and how much load is in reserve: criteria, first ply, last ply, failure surface.
 *
 * <p><b>Reserve factor.</b> The number by which the mechanical load can be multiplied until a criterion is reached; the
 * residual stress of cooling and moisture stays as it is. σ(R) = σ<sub>residual</sub> + R σ<sub>mechanical</sub>. It is
 * 0 where the residual stress alone reaches the criterion, and absent where no load however high reaches it; it is
 * never infinite or not a number.
 *
 * <p><b>Criteria</b> are linear elastic and judge stress at a point; none is a class approval. Stresses are in the axes
 * of the ply: σ1 along direction 1, σ2 across it, τ12. Strengths are positive, also of compression.
 *
 * <p><b>Literature</b> (all cited from memory):
 *
 * <ul>
 *   <li>R. M. Jones, <i>Mechanics of Composite Materials</i>, 2nd ed., 1999, ch. 2 (maximum stress, maximum strain,
 *       Tsai–Hill, Tsai–Wu).
 *   <li>A. K. Kaw, <i>Mechanics of Composite Materials</i>, 2nd ed., 2006, ch. 2 and 5 (the same with worked examples;
 *       ply discount).
 *   <li>V. D. Azzi and S. W. Tsai, Anisotropic strength of composites, <i>Exp. Mech.</i> 5 (1965) 283 (Tsai–Hill).
 *   <li>S. W. Tsai and E. M. Wu, A general theory of strength for anisotropic materials, <i>J. Compos. Mater.</i> 5
 *       (1971) 58.
 *   <li>Z. Hashin, Failure criteria for unidirectional fiber composites, <i>J. Appl. Mech.</i> 47 (1980) 329.
 *   <li>P. D. Soden, M. J. Hinton, A. S. Kaddour, Lamina properties, lay-up configurations and loading conditions for a
 *       range of fibre-reinforced composite laminates, <i>Compos. Sci. Technol.</i> 58 (1998) 1011.
 * </ul>
 */
package laminate.theory.failure;
