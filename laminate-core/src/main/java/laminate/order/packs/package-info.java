/**
 * Packs: in which of them a need is bought at the least cost.
 *
 * <p><b>Conventions.</b> Amounts are exact decimals in the unit in which the material is sold (kg, l, m², m or pieces),
 * the same unit for a need and its packs; prices are what a whole pack costs.
 */
package laminate.order.packs;
