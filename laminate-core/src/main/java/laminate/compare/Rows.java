package laminate.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import laminate.check.Reserve;
import laminate.check.Subject;
import laminate.estimate.MaterialQuantity;
import laminate.estimate.PartEstimate;
import laminate.estimate.ResinQuantity;
import laminate.estimate.ZoneEstimate;
import laminate.theory.Equivalence.Stiffness;

/** The figures of every alternative, line by line. */
final class Rows {
    private static final Map<Measure, ToDoubleFunction<Alternative>> OF_PART = ofPart();
    private static final Map<Measure, ToDoubleFunction<ZoneEstimate>> OF_ZONE = ofZone();

    private final List<Alternative> alternatives;
    /** By subject and measure, in the order first met; a value for each alternative. */
    private final Map<Subject, Map<Measure, List<OptionalDouble>>> found = new LinkedHashMap<>();

    private Rows(List<Alternative> alternatives) {
        this.alternatives = alternatives;
    }

    private static Map<Measure, ToDoubleFunction<Alternative>> ofPart() {
        Map<Measure, ToDoubleFunction<Alternative>> measures = new LinkedHashMap<>();
        measures.put(
                Measure.MEAN_THICKNESS, way -> way.estimate().meanThickness().planned());
        measures.put(Measure.MASS, way -> way.estimate().massEach().planned());
        measures.put(Measure.FIBRE_MASS_FRACTION, way -> way.estimate().fibreMassFraction());
        measures.put(Measure.FIBRE_VOLUME_FRACTION, way -> way.estimate().fibreVolumeFraction());
        measures.put(Measure.VOID_FRACTION, way -> way.estimate().voidFraction());
        measures.put(Measure.FIBRE, each(way -> way.estimate().quantities().fibre()));
        measures.put(
                Measure.RESIN_IN_PART, each(way -> way.estimate().quantities().resinInPart()));
        measures.put(
                Measure.RESIN_TO_MIX, each(way -> way.estimate().quantities().resinToMix()));
        measures.put(Measure.RESIN_WASTE, each(way -> resinWaste(way.estimate())));
        measures.put(Measure.SHEET_WASTE, each(way -> sheetWaste(way.estimate())));
        measures.put(Measure.STYRENE, each(Alternative::styrene));
        measures.put(Measure.TIME, each(way -> way.estimate().time()));
        return measures;
    }

    private static ToDoubleFunction<Alternative> each(ToDoubleFunction<Alternative> ofAll) {
        return way -> ofAll.applyAsDouble(way) / way.estimate().part().count();
    }

    private static double resinWaste(PartEstimate estimate) {
        return estimate.quantities().resins().stream()
                .mapToDouble(ResinQuantity::lost)
                .sum();
    }

    /** What is bought by area ends in the part or is cut away. */
    private static double sheetWaste(PartEstimate estimate) {
        return estimate.quantities().materials().stream()
                .filter(material -> material.area().isPresent())
                .mapToDouble(Rows::cutAway)
                .sum();
    }

    private static double cutAway(MaterialQuantity sheet) {
        return sheet.mass().orElse(0) - sheet.inPart();
    }

    private static Map<Measure, ToDoubleFunction<ZoneEstimate>> ofZone() {
        Map<Measure, ToDoubleFunction<ZoneEstimate>> measures = new LinkedHashMap<>();
        measures.put(Measure.THICKNESS, zone -> zone.thickness().planned());
        measures.put(Measure.MASS_PER_AREA, zone -> zone.massPerArea().planned());
        measures.put(Measure.BENDING_STIFFNESS_X, zone -> Stiffness.BENDING_X.of(zone.laminate()));
        measures.put(Measure.BENDING_STIFFNESS_Y, zone -> Stiffness.BENDING_Y.of(zone.laminate()));
        measures.put(Measure.BENDING_MODULUS_X, zone -> bendingModulus(zone, Stiffness.BENDING_X));
        measures.put(Measure.BENDING_MODULUS_Y, zone -> bendingModulus(zone, Stiffness.BENDING_Y));
        return measures;
    }

    /** E = 12/(d t³) (Pa). */
    static double bendingModulus(ZoneEstimate zone, Stiffness along) {
        double t = zone.laminate().thickness();
        return 12 * along.of(zone.laminate()) / (t * t * t);
    }

    /** The figures of the part alone. */
    static List<Row> ofParts(List<Alternative> alternatives) {
        Subject part = part(alternatives);
        return OF_PART.entrySet().stream()
                .map(measure -> new Row(
                        part,
                        measure.getKey(),
                        alternatives.stream()
                                .map(way -> OptionalDouble.of(measure.getValue().applyAsDouble(way)))
                                .toList()))
                .toList();
    }

    private static Subject part(List<Alternative> alternatives) {
        String name = alternatives.get(0).estimate().part().name();
        return new Subject(Subject.Kind.PART, name, name);
    }

    /** All figures: of the part, its zones, load cases, panels and beams. */
    static List<Row> of(List<Alternative> alternatives) {
        Rows rows = new Rows(alternatives);
        for (int i = 0; i < alternatives.size(); i++) {
            rows.addZones(i);
            rows.addChecks(i);
        }
        List<Row> all = new ArrayList<>(ofParts(alternatives));
        for (Subject.Kind kind : Subject.Kind.values()) {
            rows.found.forEach((subject, measures) -> {
                if (subject.kind() == kind) {
                    measures.forEach((measure, values) -> all.add(new Row(subject, measure, values)));
                }
            });
        }
        return all;
    }

    private void addZones(int number) {
        PartEstimate first = alternatives.get(0).estimate();
        PartEstimate estimate = alternatives.get(number).estimate();
        for (int i = 0; i < estimate.zones().size(); i++) {
            ZoneEstimate zone = estimate.zones().get(i);
            Subject subject = subject(first, estimate, i);
            OF_ZONE.forEach(
                    (measure, value) -> add(subject, measure, number, OptionalDouble.of(value.applyAsDouble(zone))));
        }
    }

    /** A zone goes by the name of its like in the first, if that is told one for one. */
    private static Subject subject(PartEstimate first, PartEstimate estimate, int zone) {
        boolean alone = first.zones().size() == 1 && estimate.zones().size() == 1;
        List<String> names = ZoneMatch.names(alone ? first : estimate);
        int namesakes = Collections.frequency(names.subList(0, zone), names.get(zone));
        String name = names.get(zone) + (namesakes > 0 ? " (" + (namesakes + 1) + ")" : "");
        return new Subject(Subject.Kind.ZONE, name, name);
    }

    private void addChecks(int number) {
        alternatives.get(number).check().ifPresent(check -> {
            check.zones()
                    .forEach(zone -> zone.loadCases().forEach(loadCase -> {
                        String of = zone.zone().zone().name();
                        Subject subject = new Subject(
                                Subject.Kind.LOAD_CASE, loadCase.loadCase().name(), of);
                        add(subject, Measure.RESERVE_FACTOR, number, least(loadCase.reserves()));
                    }));
            check.panels().forEach(panel -> {
                Subject subject = new Subject(
                        Subject.Kind.PANEL, panel.plan().name(), panel.plan().zone());
                add(subject, Measure.DEFLECTION, number, magnitude(panel.governingDeflection()));
                add(subject, Measure.RESERVE_FACTOR, number, least(panel.reserves()));
            });
            check.beams().forEach(beam -> {
                Subject subject = new Subject(
                        Subject.Kind.BEAM, beam.plan().name(), beam.plan().zone());
                add(
                        subject,
                        Measure.DEFLECTION,
                        number,
                        magnitude(beam.deflection().total()));
                add(subject, Measure.RESERVE_FACTOR, number, least(beam.reserves()));
            });
        });
    }

    private static OptionalDouble magnitude(double deflection) {
        return OptionalDouble.of(Math.abs(deflection));
    }

    private static OptionalDouble least(List<Reserve> reserves) {
        return reserves.stream().mapToDouble(Reserve::factor).min();
    }

    private void add(Subject subject, Measure measure, int number, OptionalDouble value) {
        found.computeIfAbsent(subject, none -> new LinkedHashMap<>())
                .computeIfAbsent(
                        measure,
                        none -> new ArrayList<>(Collections.nCopies(alternatives.size(), OptionalDouble.empty())))
                .set(number, value);
    }
}
