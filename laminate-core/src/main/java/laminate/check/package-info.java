/**
 * Will the part be stiff and strong enough: load cases, panels and beams of an estimated part against the limits that it
 * sets, with what would mend each miss.
 *
 * <p>A reserve factor multiplies the mechanical load until something fails; residual stress of temperature and moisture
 * stays. Stiffness and strength are linear elastic; nothing here is a class approval.
 */
package laminate.check;
