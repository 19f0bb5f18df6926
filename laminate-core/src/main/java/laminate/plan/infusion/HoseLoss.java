package laminate.plan.infusion;

import laminate.theory.Require;

/**
 * What the feed hose takes of the driving pressure.
 *
 * @param flow through the hose with the front half way (m³/s)
 * @param pressure lost in the hose at that flow (Pa)
 * @param delay how much longer the filling takes for the hose (s)
 */
public record HoseLoss(double flow, double pressure, double delay) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if one is negative, NaN or infinite
     */
    public HoseLoss {
        Require.notNegative("flow through the hose", flow);
        Require.notNegative("pressure lost in the hose", pressure);
        Require.notNegative("delay by the hose", delay);
    }
}
