/**
 * The work of one moulding, planned for the day: stages in the order they are laid, each with the mixes that are used up
 * before they gel, what the clock says, and a sheet of each stage to tick off.
 *
 * <p>A plan is of one moulding; {@link laminate.plan.MixPlan#mouldings()} says how often it is repeated. Needs are shares
 * of what the estimate says is to be mixed, and sum to it.
 */
package laminate.plan;
