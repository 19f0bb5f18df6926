package laminate.plan.infusion;

import laminate.part.infusion.InfusionPlan;

/**
 * Between which factors the true permeability lies.
 *
 * @param least of the permeability that is reckoned with
 * @param most of it
 */
record Scatter(double least, double most) {

    /**
     * Coefficient of variation 32 % of a stitched and 44 % of a woven fabric between 19 laboratories: May et al., third
     * in-plane permeability benchmark, Composites Part A 121 (2019), printed in its abstract.
     */
    static final Scatter BETWEEN_LABORATORIES = new Scatter(0.6, 1.4);

    static final Scatter FROM_MEMORY = new Scatter(1 / TypicalPermeability.FACTOR, TypicalPermeability.FACTOR);

    static Scatter of(InfusionPlan plan) {
        return FlowBed.isFromMemory(plan) ? FROM_MEMORY : BETWEEN_LABORATORIES;
    }
}
