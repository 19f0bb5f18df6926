/**
 * Cutting: rectangular pieces laid on a roll or on sheets so that little is left over.
 *
 * <p><b>Conventions.</b> x runs across the roll from its left edge, y along it from its start. A piece's width lies
 * across, its length along the roll, as the warp does, unless it is turned by a quarter. Lengths in metres; inside,
 * in whole steps of a decimal grid ({@code Grid}), so that sizes which fill a width on paper fill it here.
 *
 * <p><b>Method.</b> The problem is strip packing (sheets: bin packing) of rectangles, for which no fast exact method is
 * known. Pieces are laid at the lowest place of the skyline, the one that fits best first; which of equals comes first is
 * improved by annealing for a given number of steps. A lower bound says how far from the best a plan can be.
 *
 * <p><b>Literature</b> (from memory, but for the instances, whose data stand with the tests):
 *
 * <ul>
 *   <li>E. Hopper and B. C. H. Turton, An empirical investigation of meta-heuristic and heuristic algorithms for a 2D
 *       packing problem, European Journal of Operational Research 128 (2001) 34-57: instances with known optimum.
 *   <li>E. K. Burke, G. Kendall and G. Whitwell, A new placement heuristic for the orthogonal stock-cutting problem,
 *       Operations Research 52 (2004) 655-671: the lowest place, and the piece that fits it best.
 *   <li>S. C. H. Leung, D. Zhang and K. M. Sim, A two-stage intelligent search algorithm for the two-dimensional strip
 *       packing problem, European Journal of Operational Research 215 (2011) 57-69: scores by edges that meet; annealing.
 *   <li>S. P. Fekete and J. Schepers, A general framework for bounds for higher-dimensional orthogonal packing problems,
 *       Mathematical Methods of Operations Research 60 (2004) 311-329: lower bounds.
 *   <li>S. Kirkpatrick, C. D. Gelatt and M. P. Vecchi, Optimization by simulated annealing, Science 220 (1983) 671-680.
 * </ul>
 */
package laminate.order.cut;
