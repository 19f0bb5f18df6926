package laminate.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import laminate.material.Figure;
import laminate.material.Material;
import laminate.material.Reinforcement;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.unit.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every figure of every material states its source and its status, and lies in the band of {@code plausible-bands.csv},
 * which catches a slip of unit or decimal point and nothing finer.
 */
class PlausibleFiguresTest {
    private static final MaterialLibrary LIBRARY = new MaterialLibrary();
    private static final Map<String, Band> BANDS = bands();

    /**
     * Between which bounds a property lies.
     *
     * @param from the least value (SI)
     * @param to the greatest value (SI)
     */
    record Band(double from, double to) {}

    static List<String> ids() {
        return LIBRARY.ids();
    }

    @ParameterizedTest
    @MethodSource("ids")
    void everyFigureLiesInItsBand(String id) {
        Material material = LIBRARY.find(id).orElseThrow();
        values(material).forEach((property, values) -> {
            Band band = BANDS.get(material.kind().word() + "," + property);
            assertThat(band).as("band of " + property).isNotNull();
            assertThat(values)
                    .as(property)
                    .allSatisfy(value -> assertThat(value)
                            .isBetween(band.from() - 1e-12 * Math.abs(band.from()), band.to() * (1 + 1e-12)));
        });
    }

    @ParameterizedTest
    @MethodSource("ids")
    void everyFigureStatesItsSourceAndStatus(String id) {
        for (Figure figure : figures(LIBRARY.find(id).orElseThrow())) {
            assertThat(figure.source()).isNotBlank().doesNotContain("stated by the user");
            assertThat(figure.status()).isNotEqualTo(Status.USER);
            if (figure.source().contains("from memory")) {
                assertThat(figure.status()).as(figure.source()).isNotEqualTo(Status.PRINTED);
            }
            if (figure.source().contains("no source")) {
                assertThat(figure.status()).as(figure.source()).isEqualTo(Status.COMMON_PRACTICE);
            }
        }
    }

    @Test
    void everyBandHoldsForSomething() {
        Set<String> used = new LinkedHashSet<>();
        for (String id : ids()) {
            Material material = LIBRARY.find(id).orElseThrow();
            values(material)
                    .keySet()
                    .forEach(property -> used.add(material.kind().word() + "," + property));
        }
        assertThat(BANDS.keySet()).containsExactlyInAnyOrderElementsOf(used);
    }

    private static List<Figure> figures(Material material) {
        List<Figure> figures = new ArrayList<>(material.figures().asMap().values());
        if (material instanceof Resin resin) {
            for (Resin.Cure cure : resin.cures()) {
                figures.addAll(List.of(cure.amount(), cure.from(), cure.to()));
            }
            resin.gelPoints().forEach(point -> figures.add(point.time()));
        } else if (material instanceof Reinforcement reinforcement) {
            reinforcement
                    .measured()
                    .ifPresent(measured -> figures.addAll(measured.asMap().values()));
        }
        return figures;
    }

    private static Map<String, List<Double>> values(Material material) {
        Map<String, List<Double>> values = new LinkedHashMap<>();
        material.figures().asMap().forEach((property, figure) -> values.put(property.key(), List.of(figure.value())));
        if (material instanceof Resin resin) {
            values.put(
                    "cure.amount",
                    resin.cures().stream().map(cure -> cure.amount().value()).toList());
            values.put(
                    "cure.from",
                    resin.cures().stream().map(cure -> cure.from().value()).toList());
            values.put(
                    "cure.to",
                    resin.cures().stream().map(cure -> cure.to().value()).toList());
            values.put(
                    "gel-time.temperature",
                    resin.gelPoints().stream().map(Resin.GelPoint::temperature).toList());
            values.put(
                    "gel-time.amount",
                    resin.gelPoints().stream().map(Resin.GelPoint::amount).toList());
            values.put(
                    "gel-time.time",
                    resin.gelPoints().stream()
                            .map(point -> point.time().value())
                            .toList());
        } else if (material instanceof Reinforcement reinforcement
                && reinforcement.plies().size() > 1) {
            values.put(
                    "plies.areal-weight",
                    reinforcement.plies().stream().map(ply -> ply.arealMass()).toList());
        }
        return values;
    }

    private static Map<String, Band> bands() {
        Map<String, Band> bands = new LinkedHashMap<>();
        try (InputStream in = PlausibleFiguresTest.class.getResourceAsStream("plausible-bands.csv")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            text.lines()
                    .skip(1)
                    .map(line -> line.split(",", 6))
                    .forEach(cells -> bands.put(
                            cells[0] + "," + cells[1], new Band(si(cells[2], cells[4]), si(cells[3], cells[4]))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bands;
    }

    private static double si(String number, String unit) {
        double value = Double.parseDouble(number);
        Optional<Unit> known = unit.isEmpty() ? Optional.empty() : Unit.find(unit);
        assertThat(known.isPresent()).as(unit).isEqualTo(!unit.isEmpty());
        return known.map(found -> found.toSi(value)).orElse(value);
    }
}
