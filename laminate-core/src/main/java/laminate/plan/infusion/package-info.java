/**
 * Will an infusion fill before the resin gels: fill time, front, reach of a feed line, resin left in hoses, mesh, grooves
 * and pot, for the plan of a part or of its zones.
 *
 * <p>The formulas are those of {@code laminate.process.flow}; here they meet the part. Whatever the layers or the library
 * tell already is taken from there, and every figure says where it comes from ({@link laminate.plan.infusion.FlowFigures}).
 *
 * <p>Scatter: permeability measured by 19 laboratories on one fabric differed by a coefficient of variation of 32 % for a
 * stitched and 44 % for a woven one, so that a fill time is worth ±40 % of permeability at best (May et al., third in-plane
 * permeability benchmark, Composites Part A 121, 2019).
 */
package laminate.plan.infusion;
