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
                coatings: [{gelcoat: gelcoat-iso, wet-film: 0.5 mm}]
                layers:
                  - {reinforcement: mat-450, fibre-mass-fraction: 32 %}
                  - {core: pvc-80, thickness: 10 mm, bed: bonding-paste, bed-thickness: 1 mm}
            """;

    private static final Map<String, String> OTHERS = Map.of("workshop", """
            temperature: 18 °C
            fibre-content: [{process: infusion, kind: mat, fibre-volume-fraction: 25 %}]
            loss: {infusion: {resin: 8 %, lines: 0.35 kg}}
            labour: {rate: 28 GBP/h, operations: {lay-up: 0.2 h/m² per layer, setting up: 0.75 h}}
            consumables: [{material: peel-ply, amount: 1.15 m², per: m²}, {material: brush, amount: 2 piece, per: moulding}]
            micromechanics: marine-rule
            knock-down: {woven: 90 %}
            """, "prices", """
            currency: GBP
            date: 2026-01-15
            prices: [{material: mat-450, price: 3.10 GBP/kg, roll: {width: 1.27 m, mass: 35 kg}}]
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
        if (yaml.matches("(?s)(.*\\n)?part:.*")) {
            return "part";
        } else if (yaml.matches("(?s)(.*\\n)?prices:.*")) {
            return "prices";
        }
        return yaml.matches("(?s)(.*\\n)?materials?:.*") ? "material" : "workshop";
    }

    @ParameterizedTest
    @ValueSource(strings = {"part", "workshop", "prices", "material"})
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
        assertThat(samples().stream().map(file -> kindOf(read(file)))).contains("part", "workshop", "prices");
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

    @ParameterizedTest
    @ValueSource(strings = {"workshop", "prices", "material"})
    void takesTheOtherFilesThatTheSlipsAreMadeIn(String kind) {
        assertThat(faults(kind, OTHERS.get(kind))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
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
                "prices | currency: GBP | date: 2026-01-16", // a missing key
                "prices | 3.10 GBP/kg | 3.10", // a price without currency and measure
                "prices | 3.10 GBP/kg | 3.10 GBP/h", // a material by the hour
                "prices | 2026-01-15 | 15 January", // no date
                "prices | 'width: 1.27 m, ' | ''", // a roll without its width
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
