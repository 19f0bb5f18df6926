package laminate.plan;

import java.util.OptionalDouble;

/**
 * What is laid or applied in a stage on the zones of one name: a layer, or one coat.
 *
 * @param zone the name of the zone
 * @param number the layer's place in the zone, from 1 at the mould face; of a coating, which coat it is
 * @param material the id
 * @param pieces how many such zones a moulding has, each with a piece of its own
 * @param angle turns the roll from x (degrees); empty for a coating
 * @param turned whether it is laid other face down
 * @param area area of all pieces with laps and trimmed margin (m²)
 * @param lapShare share of the finished area that is laid twice at seams
 * @param thickness planned thickness (m)
 * @param resin resin to mix for it, without agent (kg)
 */
public record StageLayer(
        String zone,
        int number,
        String material,
        int pieces,
        OptionalDouble angle,
        boolean turned,
        double area,
        double lapShare,
        double thickness,
        double resin) {

    StageLayer withResin(double toMix) {
        return new StageLayer(zone, number, material, pieces, angle, turned, area, lapShare, thickness, toMix);
    }
}
