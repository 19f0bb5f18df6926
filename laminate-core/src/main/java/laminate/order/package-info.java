/**
 * Orders: what parts need, less what lies in stock, in the packs of {@link laminate.order.packs} and on the rolls that it is
 * cut from.
 *
 * <p><b>Conventions.</b> What is needed is a double in the measure in which the material is sold (kg, l, m², m or pieces);
 * what is bought in packs is exact.
 */
package laminate.order;
