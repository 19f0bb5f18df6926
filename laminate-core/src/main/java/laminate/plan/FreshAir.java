package laminate.plan;

import laminate.material.Status;

/**
 * Fresh air that would dilute the styrene given off to an exposure limit. An estimate for the choice of a fan; it replaces
 * no measurement, and no extraction at the source.
 *
 * @param stage the number of the stage that asks for most
 * @param styrene styrene given off in it (kg)
 * @param time the time over which it is given off (s)
 * @param limit the exposure limit (kg/m³)
 * @param flow fresh air (m³/s)
 * @param source the source of the limit
 * @param status how the limit relates to it
 */
public record FreshAir(
        int stage, double styrene, double time, double limit, double flow, String source, Status status) {}
