package laminate.estimate;

/**
 * One line of the cutting list: a layer of a zone, for all mouldings, with laps and trim and before cutting waste.
 *
 * @param zone the zone
 * @param number the layer's place in the zone, from 1 at the mould face
 * @param material the id
 * @param area area to cut (m²)
 * @param mass dry mass of that area (kg)
 * @param resin resin that the area wants, without losses (kg)
 */
public record LayerCut(String zone, int number, String material, double area, double mass, double resin) {}
