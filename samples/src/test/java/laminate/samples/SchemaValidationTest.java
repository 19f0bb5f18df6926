package laminate.samples;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaId;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The JSON Schemas, which editors check files by, take the files there are and refuse the usual slips. */
class SchemaValidationTest {

    private static final Path SCHEMAS = Program.ROOT.resolve("laminate-core/src/main/resources/laminate/schema");
    private static final Path LIBRARY = Program.ROOT.resolve("material-library/src/main/resources/laminate/library");
    private static final Path SAMPLES = Program.ROOT.resolve("samples/lake-club");
    private static final Pattern YAML_BLOCK = Pattern.compile("(?ms)^```yaml\\n(.*?)^```$");
    private static final JsonSchemaFactory FACTORY = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);
    private static final Map<String, JsonSchema> LOADED = new ConcurrentHashMap<>();

    private static final String PART = """
            part: Bow locker lid
            process: hand lay-up
            resin: polyester-ortho
            zones:
              - name: lid
                area: 0.62 m²
                outline: {length: 1020 mm, width: 640 mm, shape-factor: 95 %}
                coatings: [{gelcoat: gelcoat-iso, wet-film: 0.5 mm}]
                layers:
                  - {reinforcement: mat-450, fibre-mass-fraction: 32 %}
                  - {core: pvc-80, thickness: 10 mm, bed: bonding-paste, bed-thickness: 1 mm}
            """;

    private static final String CARRYING = """
                load-cases: [{name: pull, Nx: 1000 N/m}]
            panels:
              - {name: a, zone: lid, length: 600 mm, width: 400 mm, edges: clamped, pressure: 10 kPa}
              - {name: b, zone: lid, length: 600 mm, width: 400 mm, edges: [free, free, free, clamped], head: 0.6 m}
              - {name: c, zone: lid, length: 600 mm, width: 400 mm, edges: simply supported, head: 0.5 m, upright: length}
              - name: d
                zone: lid
                length: 600 mm
                width: 400 mm
                edges: simply supported
                patch: {force: 900 N, length: 80 mm, width: 80 mm}
                edge-loads: {Nx: -5 N/mm}
            beams:
              - {name: e, zone: lid, span: 900 mm, width: 250 mm, loading: four-point, force: 800 N, load-span: 300 mm}
            limits: {deflection: 1/100 span, reserve-factor: {first-ply: 1.5}, mass: 25 kg}
            """;

    private static final String PLANNED = """
            part: Hatch cover
            process: infusion
            resin: epoxy-infusion
            schedules: {shell: [biaxial-600], light: [biaxial-45-400]}
            alternatives: {shell: light}
            zones:
              - name: cover
                area: 0.8 m²
                layers: [{schedule: shell}]
                infusion:
                  feed: centre
                  feed-radius: 20 mm
                  flow-length: 400 mm
                  driving-pressure: 95 kPa
                  cross-permeability: 4e-11 m²
                  strip-test: {length: 300 mm, time: 474 s, vacuum: 900 mbar}
            infusion:
              feed: line
              flow-length: 1 m
              vacuum: 950 mbar
              viscosity: 0.2 Pa·s
              porosity: 50 %
              permeability: 1e-10 m²
              permeability-at: 45 %
              compaction: {exponent: 0.07}
              segments: [{length: 0.4 m, porosity: 45 %}, {length: 0.6 m}]
              mesh: {thickness: 1 mm, permeability: 3e-9 m², porosity: 80 %}
              hose: {bore: 10 mm, length: 2 m}
              leak: {drop: 10 mbar, time: 10 min}
            tooling: [{process: infusion, price: 1400 GBP, life: 300}, {set-up: 6 h}, {part: mould.yaml, planned-pulls: 50}]
            """;

    private static final Map<String, String> OTHERS =
            Map.of("project", """
            project: Bow lockers
            workshop: workshop.yaml
            prices: prices.yaml
            materials: [own.yaml]
            mouldings:
              - {part: locker-lid.yaml, count: 2, made-on: lid mould}
              - {part: locker-hatch.yaml}
            tooling:
              - {name: lid mould, part: locker-lid-mould.yaml, life: 120, planned-pulls: 200, set-up: 0.5 h, made-on: lid plug}
              - {name: lid plug, part: locker-lid-plug.yaml, life: 3, in-hand: 0, set-up-price: 38 GBP}
              - {name: frame mould, price: 1750 GBP, in-hand: 1}
            """, "workshop", """
            temperature: 18 °C
            fibre-content: [{process: infusion, kind: mat, fibre-volume-fraction: 25 %}]
            loss: {infusion: {resin: 8 %, lines: 0.35 kg}}
            labour:
              rate: 28 GBP/h
              crew: 2
              paid: 1.2
              learning: {rate: 90 %, counted-on: 5}
              cure: 16 h
              operations: {lay-up: 0.2 h/m² per layer, setting up: 0.75 h, drilling: 3 min per item}
            pricing:
              rejects: 5 %
              overhead: {rate: 100 %, on: labour}
              contingency: 4 %
              margin: 25 %
              discount: 2 %
              tax: {name: VAT, rate: 20 %}
            consumables: [{material: peel-ply, amount: 1.15 m², per: m²}, {material: brush, amount: 2 piece, per: moulding}]
            micromechanics: marine-rule
            knock-down: {woven: 90 %}
            strength: library
            mixing: {usable-share: 70 %, resin-scale: 5 g, pump-stroke: 10 ml, mixing-time: 2 min}
            working-day: {start: 08:00, length: 7.5 h}
            styrene-limit: 426 mg/m³
            """, "prices", """
            currency: GBP
            date: 2026-01-15
            prices:
              - {material: mat-450, price: 3.10 GBP/kg, roll: {width: 1.27 m, mass: 35 kg}}
              - material: polyester-ortho
                packs: [{pack: drum, amount: 25 kg, price: 102.50 GBP, minimum: 2}]
                minimum: 50 kg
                lead-time: 3 d
                shelf-life: 180 d
              - material: pvc-80
                price: 24.50 GBP/m²
                packs: [{pack: sheet, width: 1 m, length: 1.2 m, thickness: 10 mm, price: 29.40 GBP}]
            """, "stock", """
            stock:
              - {material: mat-450, amount: 4.5 kg, use-by: 2026-05-01}
              - {material: gloves, amount: 40 pieces}
              - {material: pvc-80, amount: 1.44 m², thickness: 10 mm}
            """, "material", """
            material: own
            kind: hardener
            name: Own hardener
            density: {value: 1010 kg/m³, source: own scales, status: user}
            """);

    private static JsonSchema schema(String kind) {
        return LOADED.computeIfAbsent(kind, name -> FACTORY.getSchema(read(SCHEMAS.resolve(name + ".schema.json"))));
    }

    private static Set<ValidationMessage> faults(String kind, String yaml) {
        return schema(kind).validate(yaml, InputFormat.YAML);
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> yamlFilesIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    static List<Path> samples() throws IOException {
        return yamlFilesIn(SAMPLES);
    }

    /** A file is of the kind whose first key it holds. */
    private static String kindOf(String yaml) {
        if (yaml.matches("(?s)(.*\\n)?project:.*")) {
            return "project";
        } else if (yaml.matches("(?s)(.*\\n)?part:.*")) {
            return "part";
        } else if (yaml.matches("(?s)(.*\\n)?prices:.*")) {
            return "prices";
        } else if (yaml.matches("(?s)(.*\\n)?stock:.*")) {
            return "stock";
        }
        return yaml.matches("(?s)(.*\\n)?materials?:.*") ? "material" : "workshop";
    }

    @ParameterizedTest
    @ValueSource(strings = {"part", "project", "workshop", "prices", "stock", "material"})
    void isASchemaOfDraft202012(String kind) {
        JsonSchema standard = FACTORY.getSchema(SchemaLocation.of(SchemaId.V202012));

        assertThat(standard.validate(read(SCHEMAS.resolve(kind + ".schema.json")), InputFormat.JSON))
                .isEmpty();
        assertThat(standard.validate("{\"type\": 1}", InputFormat.JSON)).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void takesEverySample(Path file) {
        String yaml = read(file);

        assertThat(faults(kindOf(yaml), yaml)).isEmpty();
    }

    @Test
    void thereAreSamplesOfAllKindsButMaterials() throws IOException {
        assertThat(samples().stream().map(file -> kindOf(read(file)))).contains("part", "workshop", "prices", "stock");
    }

    @Test
    void takesEveryMaterialOfTheLibrary() throws IOException {
        assertThat(yamlFilesIn(LIBRARY))
                .hasSizeGreaterThan(100)
                .allSatisfy(file -> assertThat(faults("material", read(file)))
                        .as("%s", file)
                        .isEmpty());
    }

    @Test
    void takesAListOfMaterials() {
        String yaml = "materials:\n  - {material: own-mekp, kind: catalyst, name: Own, density: 1.17 g/cm³}\n";

        assertThat(faults("material", yaml)).isEmpty();
        assertThat(faults("material", yaml.replace("density", "densitie"))).isNotEmpty();
    }

    @Test
    void takesThePartFilesOfTheReadme() {
        List<String> parts = YAML_BLOCK
                .matcher(read(Program.ROOT.resolve("README.md")))
                .results()
                .map(found -> found.group(1))
                .filter(yaml -> kindOf(yaml).equals("part"))
                .toList();

        assertThat(parts)
                .isNotEmpty()
                .allSatisfy(yaml -> assertThat(faults("part", yaml)).isEmpty());
    }

    @Test
    void takesThePartThatTheSlipsAreMadeIn() {
        assertThat(faults("part", PART)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "', width: 640 mm' | ''", // an outline without its width
                "shape-factor: 95 % | shape-factor: 0.95", // a share without its sign
                "area: 0.62 m² | areaa: 0.62 m²", // an unknown key
                "area: 0.62 m² | area: 0.62", // a bare number
                "area: 0.62 m² | area: 0.62 mm", // a unit of another dimension
                "area: 0.62 m² | area: 0,62 m²", // a decimal comma
                "area: 0.62 m² | count: 2", // a missing key
                "fibre-mass-fraction: 32 % | fibre-mass-fraction: 0.32", // a share without its sign
                "fibre-mass-fraction: 32 % | fibre-mass-fraction: 32 %, thickness: 1 mm", // two contents
                "fibre-mass-fraction: 32 % | turned: yes please", // neither true nor false
                "fibre-mass-fraction: 32 % | times: 1.5", // half a layer
                "process: hand lay-up | process: hand layup", // an unknown word
                "resin: polyester-ortho | resin: Polyester Ortho", // no id
                "resin: polyester-ortho | surface: simple", // a surface without its set of contents
                "wet-film: 0.5 mm | coats: 2", // a coating without a film
                "wet-film: 0.5 mm | wet-film: 0.5 mm, areal-weight: 500 g/m²", // two films
                "gelcoat: gelcoat-iso | gelcoat: gelcoat-iso, paint: paint-polyurethane", // two coatings in one
                "bed: bonding-paste, | bed: bonding-paste, finish: smooth,", // an unknown finish
                ", bed-thickness: 1 mm | ''", // half of a bed
                "core: pvc-80 | core: pvc-80, reinforcement: mat-450" // two kinds of layer
            })
    void refusesSlipsInAPart(String right, String wrong) {
        assertThat(PART).containsOnlyOnce(right);

        assertThat(faults("part", PART.replace(right, wrong))).isNotEmpty();
    }

    @Test
    void takesTheLoadedPartThatTheSlipsAreMadeIn() {
        assertThat(faults("part", PART + CARRYING)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Nx: 1000 N/m | Nx: 1000", // a bare number
                "Nx: 1000 N/m | Nx: 1000 N", // a unit of another dimension
                "Nx: 1000 N/m | Nx: 1000 N/m, strain-x: 0.1 %", // both of a pair
                "Nx: 1000 N/m | strain-x: 1000", // millionths of strain
                "', Nx: 1000 N/m' | ''", // no load
                "'name: pull, ' | ''", // no name
                "edges: clamped | edges: clampt", // an unknown word
                "edges: clamped | edges: free", // nothing held
                "edges: clamped | edges: [clamped, clamped, free]", // three edges
                "'edges: clamped, ' | ''", // no edges
                "pressure: 10 kPa | pressure: 10 N", // a unit of another dimension
                "pressure: 10 kPa | pressure: 10 kPa, head: 0.6 m", // two pressures
                "pressure: 10 kPa | pressure: 10 kPa, water: salt", // a water without its head
                "', pressure: 10 kPa' | ''", // no load
                "head: 0.6 m | head: 0.6 m, water: salt, density: 1010 kg/m³", // two densities
                "head: 0.6 m | head: 0.6 m, upright: width, flat: true", // flat and upright
                "upright: length | upright: y", // an unknown side
                "force: 900 N | force: 900 N, pressure: 1 kPa", // force and pressure
                "force: 900 N, | ''", // neither force nor pressure
                "Nx: -5 N/mm | Mx: 5 N", // a moment on an edge
                "load-span: 300 mm | load-span: 300", // a bare number
                "', load-span: 300 mm' | ''", // four-point without its load span
                "force: 800 N | line-load: 2 N/mm", // a line load at two points
                "loading: four-point | loading: uniform", // a force that is uniform
                "loading: four-point | loading: three-point", // a load span with one force
                "1/100 span | 1/100", // a share of nothing
                "1/100 span | 0.01", // a bare number
                "first-ply: 1.5 | fist-ply: 1.5", // an unknown kind of failure
                "first-ply: 1.5 | first-ply: -1.5", // a reserve below zero
                "mass: 25 kg | mass: 25 kg, weight: 25 kg" // an unknown key
            })
    void refusesSlipsInWhatAPartHasToCarry(String right, String wrong) {
        assertThat(CARRYING).containsOnlyOnce(right);

        assertThat(faults("part", PART + CARRYING.replace(right, wrong))).isNotEmpty();
    }

    @Test
    void takesThePlannedPartThatTheSlipsAreMadeIn() {
        assertThat(faults("part", PLANNED)).isEmpty();
        assertThat(faults(
                        "part",
                        PLANNED.replace("permeability: 1e-10 m²\n  permeability-at: 45 %", "permeability: typical")))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "feed: line | feed: edge", // an unknown word
                "feed: line | feed: rim", // a rim without its radius
                "feed: centre | feed: line", // a line with a radius
                "feed: centre | feed: rim", // resin that runs across from a rim
                "'feed: line' | 'margin: 70 %'", // a missing key
                "vacuum: 950 mbar | vacuum: 950", // a bare number
                "vacuum: 950 mbar | vacuum: 950 mm", // a unit of another dimension
                "vacuum: 950 mbar | rise: 1 m", // neither of the two pressures
                "feed-radius: 20 mm | 'feed-radius: 20 mm\n      vacuum: 950 mbar'", // both pressures
                "vacuum: 900 mbar | vacuum: 900 mbar, driving-pressure: 90 kPa", // both, of the test
                "0.2 Pa·s | 0.2 Pa", // a unit of another dimension
                "permeability: 1e-10 m² | permeability: 1e-10", // a bare number
                "permeability: 1e-10 m² | permeability: 1e-10 ft²", // a unit of an area
                "permeability: 1e-10 m² | permeability: usual", // another word
                "permeability: 1e-10 m² | permeability: typical", // measured at a content, and yet not measured
                "exponent: 0.07 | exponent: 7 %", // a share where a number is wanted
                "'length: 0.4 m, porosity' | porosity", // a segment without its length
                "'thickness: 1 mm, ' | ''", // a mesh without its thickness
                "bore: 10 mm | bor: 10 mm", // an unknown key
                "'drop: 10 mbar, ' | ''", // a leak test without its drop
                "', time: 474 s' | ''", // a strip test without its time
                "'price: 1400 GBP, ' | ''", // a life without a price
                "life: 300 | life: 300.5", // half a part
                "planned-pulls: 50 | planned-pulls: 0", // no part
                "'part: mould.yaml, ' | ''", // a plan without a mould
                "part: mould.yaml | 'part: mould.yaml, price: 9 GBP'", // made and bought
                "set-up: 6 h | process: vacuum bag", // nothing stated
                "1400 GBP | 1400", // a price without its currency
                "shell: light | shell: Light one" // no id
            })
    void refusesSlipsInWhatAPartIsPlannedBy(String right, String wrong) {
        assertThat(PLANNED).containsOnlyOnce(right);

        assertThat(faults("part", PLANNED.replace(right, wrong))).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | true",
                "', Xt: 1 GPa, Xc: 1 GPa, Yt: 40 MPa, Yc: 200 MPa, S: 70 MPa, S23: 60 MPa' | true",
                "', Xt: 1 GPa' | false", // one of five
                "', S23: 60 MPa' | false", // what goes with the five
                "', Xt: 1 GPa, Xc: 1 GPa, Yt: 40 MPa, Yc: 200 MPa, S: 70' | false" // a bare number
            })
    void strengthsOfALaminaStandTogether(String more, boolean taken) {
        String yaml = """
                part: Strip
                zones:
                  - name: strip
                    area: 1 m²
                    layers: [{lamina: {E1: 40 GPa, E2: 10 GPa, G12: 4 GPa, nu12: 0.3, density: 1900 kg/m³%s}, thickness: 1 mm}]
                """.formatted(more);

        assertThat(faults("part", yaml).isEmpty()).isEqualTo(taken);
    }

    @ParameterizedTest
    @ValueSource(strings = {"project", "workshop", "prices", "stock", "material"})
    void takesTheOtherFilesThatTheSlipsAreMadeIn(String kind) {
        assertThat(faults(kind, OTHERS.get(kind))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "project | 'project: Bow lockers' | 'materials: own.yaml'", // no name
                "project | mouldings | moldings", // a mistyped key
                "project | 'part: locker-hatch.yaml' | 'count: 2'", // a moulding without its part file
                "project | count: 2 | count: 0", // no part
                "project | , count: 2 | ', times: 2'", // an unknown key
                "project | 'name: lid plug, ' | ''", // a tool without a name
                "project | 'part: locker-lid-plug.yaml, ' | ''", // neither made nor bought
                "project | 1750 GBP | '1750 GBP, part: frame.yaml'", // made and bought
                "project | 1750 GBP | 1750", // a price without its currency
                "project | 1750 GBP | '1750 GBP, made-on: lid plug'", // a mould that is bought is made on nothing
                "project | in-hand: 0 | in-hand: -1", // fewer than none
                "project | 0.5 h | 0.5", // a time without its unit
                "workshop | 18 °C | 18", // a bare number
                "workshop | 18 °C | 18 mm", // a unit of another dimension
                "workshop | infusion: { | by machine: {", // an unknown process
                "workshop | 8 % | 8 g", // a loss in the measure of another
                "workshop | fibre-volume-fraction: 25 % | fibre-volume-fraction: 25 %, resin-ratio: 2", // two contents
                "workshop | , fibre-volume-fraction: 25 % | ''", // no content
                "workshop | GBP/h | GBP/kg", // a rate that is not by the hour
                "workshop | per layer | per zone", // an unknown way to count
                "workshop | 1.15 m² | 1.15", // an amount without its measure
                "workshop | marine-rule | marine rule", // an unknown model
                "workshop | strength: library | strength: handbook", // an unknown way to reckon strength
                "workshop | crew: 2 | crew: 0", // nobody
                "workshop | paid: 1.2 | paid: 0.9", // less paid than worked
                "workshop | cure: 16 h | cure: 16", // a bare number
                "workshop | per item | per hinge", // an unknown way to count
                "workshop | counted-on: 5 | counted-on: 0", // no moulding
                "workshop | on: labour | on: materials", // an unknown base
                "workshop | ', on: labour' | ''", // a base left out
                "workshop | margin: 25 % | margin: 0.25", // a share without its sign
                "workshop | discount: 2 % | mark-up: 33 %", // two profits
                "workshop | 'name: VAT, ' | ''", // a tax without its name
                "workshop | usable-share: 70 % | usable-share: 0.7", // a share without its sign
                "workshop | resin-scale: 5 g | resin-scale: 5 ml", // a unit of another dimension
                "workshop | 08:00 | 8 h", // no time of day
                "workshop | 08:00 | '24:00'", // a time of the next day
                "workshop | mg/m³ | mg/m²", // a unit of no dimension
                "prices | currency: GBP | date: 2026-01-16", // a missing key
                "prices | 3.10 GBP/kg | 3.10", // a price without currency and measure
                "prices | 3.10 GBP/kg | 3.10 GBP/h", // a material by the hour
                "prices | 2026-01-15 | 15 January", // no date
                "prices | 'width: 1.27 m, ' | ''", // a roll without its width
                "prices | 'packs: [{pack: drum, amount: 25 kg, price: 102.50 GBP, minimum: 2}]' | ''", // neither price
                // nor packs
                "prices | 'amount: 25 kg, ' | ''", // a pack that holds nobody knows what
                "prices | 102.50 GBP | 102.50 GBP/kg", // a pack by the measure
                "prices | minimum: 50 kg | minimum: 50", // an amount without its measure
                "prices | minimum: 2 | minimum: 2 drums", // a number with a word
                "prices | minimum: 2 | minimum: 0", // no number to buy
                "prices | lead-time: 3 d | lead-time: 3", // a bare number
                "prices | 'length: 1.2 m, ' | ''", // a sheet without its length
                "stock | 4.5 kg | 4.5", // an amount without its measure
                "stock | 40 pieces | 40 boxes", // an unknown measure
                "stock | 2026-05-01 | 1 May", // no date
                "stock | 'amount: 1.44 m², ' | ''", // a missing key
                "material | 1010 kg/m³ | 1010 kg", // a unit of another dimension
                "material | status: user | status: guess", // an unknown status
                "material | kind: hardener | kind: hardner", // an unknown kind
                "material | kind: hardener | kind: resin", // another kind's keys
                "material | 'name: Own hardener' | 'name: \"\"'" // an empty text
            })
    void refusesSlipsInOtherFiles(String kind, String right, String wrong) {
        assertThat(OTHERS.get(kind)).containsOnlyOnce(right);

        assertThat(faults(kind, OTHERS.get(kind).replace(right, wrong))).isNotEmpty();
    }
}
