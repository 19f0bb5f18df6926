/**
 * From a part to laid layers, laminates, quantities, hours and cost.
 *
 * <p>{@link laminate.estimate.Estimator} is the way in; {@link laminate.estimate.PartEstimate} holds all that comes out.
 * What is mixed ends in the part, is lost or evaporates; what is bought ends in the part or is cut away; every line of a
 * cost sums to its total.
 */
package laminate.estimate;
