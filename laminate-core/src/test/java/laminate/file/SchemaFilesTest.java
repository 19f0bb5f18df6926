package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import laminate.material.Core;
import laminate.material.Fibre;
import laminate.material.Form;
import laminate.material.MaterialKind;
import laminate.material.Reinforcement;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.part.BeamPlan;
import laminate.part.ReserveKind;
import laminate.part.Water;
import laminate.part.infusion.FeedKind;
import laminate.process.ConsumableUse;
import laminate.process.ContentSet;
import laminate.process.CoreFinish;
import laminate.process.Process;
import laminate.process.StrengthBasis;
import laminate.quote.price.Overhead;
import laminate.theory.Micromechanics;
import laminate.theory.panel.Edge;
import laminate.theory.panel.InPlane;
import laminate.unit.PriceBasis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each schema stands by itself, as an editor wants it, and says the same as the others and as the program. */
class SchemaFilesTest {

    @Test
    void aDefinitionIsTheSameInEveryFile() {
        Map<String, Object> seen = new HashMap<>();
        for (SchemaFile file : SchemaFile.all()) {
            file.definitions()
                    .forEach((name, definition) -> assertThat(definition)
                            .as("%s in %s", name, file.name())
                            .isEqualTo(seen.computeIfAbsent(name, first -> definition)));
        }
        assertThat(seen).hasSizeGreaterThan(40);
    }

    static List<SchemaFile> files() {
        return SchemaFile.all();
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyReferenceLeadsToADefinitionAndEveryDefinitionIsUsed(SchemaFile file) {
        assertThat(file.definitions().keySet()).containsExactlyInAnyOrderElementsOf(Set.copyOf(file.references()));
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyKeyAndEveryDefinitionIsDescribed(SchemaFile file) {
        file.definitions().forEach((name, definition) -> {
            assertThat(definition.get("description")).as(name).asString().endsWith(".");
            if (definition.containsKey("properties")) {
                SchemaFile.properties(definition)
                        .forEach((key, property) -> assertThat(property.get("description"))
                                .as("%s of %s", key, name)
                                .asString()
                                .endsWith(".")
                                .hasSizeLessThan(170));
            }
        });
    }

    @ParameterizedTest
    @MethodSource("files")
    void whatAMappingRequiresIsAmongItsKeys(SchemaFile file) {
        file.closedMappings().forEach((name, mapping) -> {
            List<?> required = (List<?>) mapping.getOrDefault("required", List.of());
            assertThat(SchemaFile.properties(mapping).keySet())
                    .as(name)
                    .containsAll(required.stream().map(String.class::cast).toList());
        });
    }

    static Stream<Arguments> words() {
        return Stream.of(
                words("process", Process.values(), Process::word),
                words("core-finish", CoreFinish.Kind.values(), CoreFinish.Kind::word),
                words("content-set", ContentSet.values(), ContentSet::word),
                words("form", Form.values(), Form::word),
                words("fibre-type", Fibre.Type.values(), Fibre.Type::word),
                words("resin-family", Resin.Family.values(), Resin.Family::word),
                words("resin-use", Resin.Use.values(), Resin.Use::word),
                words("binder", Reinforcement.Binder.values(), Reinforcement.Binder::word),
                words("core-type", Core.Type.values(), Core.Type::word),
                words("consumable-basis", ConsumableUse.Basis.values(), ConsumableUse.Basis::word),
                words("status", Status.values(), Status::word),
                words("overhead-base", Overhead.Base.values(), Overhead.Base::word),
                words("reserve-kind", ReserveKind.values(), ReserveKind::word),
                words("edge", Edge.values(), PanelReader::word),
                words("in-plane", InPlane.values(), PanelReader::word),
                words("water", Water.values(), Water::word),
                words("feed", FeedKind.values(), FeedKind::word),
                words("direction", BeamPlan.Along.values(), BeamPlan.Along::word),
                words("beam-loading", BeamReader.Loading.values(), BeamReader.Loading::word),
                words("strength-basis", StrengthBasis.values(), StrengthBasis::word),
                words("material-kind", MaterialKind.values(), MaterialKind::word),
                words(
                        "micromechanics",
                        Micromechanics.values(),
                        model -> model.name().toLowerCase(Locale.ROOT).replace('_', '-')));
    }

    @Test
    void aConsumableIsSoldByAMeasureThatItCanBeReckonedIn() {
        assertThat(SchemaFile.definition("sold-by").get("enum"))
                .isEqualTo(Stream.of(PriceBasis.KG, PriceBasis.M2, PriceBasis.M, PriceBasis.LITRE, PriceBasis.PIECE)
                        .flatMap(basis -> basis.spellings().stream())
                        .toList());
    }

    private static <E> Arguments words(String name, E[] values, Function<E, String> word) {
        return arguments(name, Stream.of(values).map(word).distinct().toList());
    }

    @ParameterizedTest
    @MethodSource("words")
    void fixedWordsAreThoseOfTheProgram(String name, List<String> words) {
        assertThat(SchemaFile.definition(name).get("enum")).isEqualTo(words);
    }
}
