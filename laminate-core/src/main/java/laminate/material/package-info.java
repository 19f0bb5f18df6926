/**
 * What is bought: fibres, resins and their agents, reinforcements, cores, bulkers and consumables.
 *
 * <p>Every figure of a material is a {@link laminate.material.Figure}: an SI value with the source it was taken from and
 * the standing of that source. The typed accessors of each record give the plain SI value for computing; {@code
 * figures()} gives the figure with its source.
 */
package laminate.material;
