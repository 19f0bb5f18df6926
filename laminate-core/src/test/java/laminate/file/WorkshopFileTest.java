package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.Fibre;
import laminate.material.Figure;
import laminate.material.Form;
import laminate.material.Resin;
import laminate.process.ConsumableUse;
import laminate.process.ContentRule;
import laminate.process.ContentSet;
import laminate.process.FibreContent;
import laminate.process.Labour;
import laminate.process.Loss;
import laminate.process.Mixing;
import laminate.process.Operation;
import laminate.process.Process;
import laminate.process.ShopFloor;
import laminate.process.StiffnessBasis;
import laminate.process.WorkingDay;
import laminate.process.Workshop;
import laminate.quote.LearningCurve;
import laminate.quote.QuotationText;
import laminate.quote.Terms;
import laminate.quote.price.Overhead;
import laminate.quote.price.Pricing;
import laminate.quote.price.Profit;
import laminate.quote.price.Tax;
import laminate.theory.Micromechanics;
import laminate.unit.PriceBasis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkshopFileTest {

    @TempDir
    private Path folder;

    private WorkshopFile read(String text) {
        return WorkshopFile.read(new Bench(folder).put("workshop.yaml", text), Bench.STOCK);
    }

    @Test
    void figuresOfTheWorkshopAreRead() {
        Workshop workshop = read("""
                temperature: 18 °C
                loss:
                  hand lay-up: {resin: 8 %, reinforcement: 12 %}
                  infusion: {bag: 150 g/m², lines: 0.26 kg}
                voids: {infusion: 2 %}
                evaporation: {hand lay-up: 5 %}
                gelcoat-application: spray
                """).workshop();
        assertThat(workshop.temperature()).hasValue(291.15);
        assertThat(workshop.loss(Process.HAND_LAY_UP, Loss.RESIN).value()).isEqualTo(0.08);
        assertThat(workshop.loss(Process.HAND_LAY_UP, Loss.REINFORCEMENT).value())
                .isEqualTo(0.12);
        assertThat(workshop.loss(Process.HAND_LAY_UP, Loss.CORE))
                .isEqualTo(Workshop.USUAL.loss(Process.HAND_LAY_UP, Loss.CORE));
        assertThat(workshop.loss(Process.INFUSION, Loss.BAG).value()).isEqualTo(0.15);
        assertThat(workshop.loss(Process.INFUSION, Loss.LINES).value()).isEqualTo(0.26);
        assertThat(workshop.voids(Process.INFUSION).value()).isEqualTo(0.02);
        assertThat(workshop.voids(Process.VACUUM_BAG)).isEqualTo(Workshop.USUAL.voids(Process.VACUUM_BAG));
        assertThat(workshop.evaporation().get(Process.HAND_LAY_UP).value()).isEqualTo(0.05);
        assertThat(workshop.gelcoatSprayed()).isTrue();
    }

    @Test
    void contentRulesAreRead() {
        WorkshopFile file = read("""
                fibre-content:
                  - {process: infusion, kind: mat, fibre: glass, resin: vinylester, fibre-volume-fraction: 25 %}
                  - {kind: woven roving, fibre-mass-fraction: 48 %}
                  - {resin-ratio: 1.5}
                """);
        assertThat(file.contents()).isEqualTo(ContentSet.TRADE);
        assertThat(file.workshop().contentRules())
                .containsExactly(
                        new ContentRule(
                                Optional.of(Process.INFUSION),
                                Optional.of(Form.MAT),
                                Optional.of(Fibre.Type.GLASS),
                                Optional.of(Resin.Family.VINYLESTER),
                                FibreContent.ofVolumeFraction(0.25)),
                        new ContentRule(
                                Optional.empty(),
                                Optional.of(Form.WOVEN_ROVING),
                                Optional.empty(),
                                Optional.empty(),
                                FibreContent.ofMassFraction(0.48)),
                        new ContentRule(
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                FibreContent.ofResinRatio(1.5)));
    }

    @Test
    void contentsMayBeASetByName() {
        assertThat(read("fibre-content: iso-nominal\nsurface: complex\n").contents())
                .isEqualTo(ContentSet.ISO_NOMINAL_COMPLEX);
        assertThat(read("fibre-content: trade\n").contents()).isEqualTo(ContentSet.TRADE);
        assertThat(read("{}\n")).isEqualTo(WorkshopFile.USUAL);
    }

    @Test
    void operationsAreCountedByWhatTheirTimeSays() {
        Labour labour = read("""
                labour:
                  rate: 28 GBP/h
                  operations:
                    lay-up: 0.2 h/m² per layer
                    gelcoat: 0.1 h/m2 per coat
                    dry lay-up: 6 min/m²
                    bagging: 0.7 h/m²
                    infusion: 90 min
                    trimming: 0.15 h/m
                    polishing: 0.5 h/m²
                    demoulding: 1 h
                    rolling: 3 min/m² per layer
                    cleaning up: 0.3 h per stage
                    drilling: 3 min per item
                """).workshop().labour();
        assertThat(labour.rate().orElseThrow()).hasToString("28 GBP/h");
        assertThat(time(labour, "lay-up")).isEqualTo(Operation.Basis.LAYER_AREA);
        assertThat(time(labour, "gelcoat")).isEqualTo(Operation.Basis.LAYER_AREA);
        assertThat(time(labour, "bagging")).isEqualTo(Operation.Basis.AREA);
        assertThat(time(labour, "infusion")).isEqualTo(Operation.Basis.MOULDING);
        assertThat(time(labour, "trimming")).isEqualTo(Operation.Basis.EDGE);
        assertThat(time(labour, "polishing")).isEqualTo(Operation.Basis.AREA);
        assertThat(time(labour, "demoulding")).isEqualTo(Operation.Basis.MOULDING);
        assertThat(operation(labour, "lay-up").time().value()).isCloseTo(720, within(1e-9));
        assertThat(operation(labour, "core")).isEqualTo(operation(Labour.USUAL, "core"));
        assertThat(time(labour, "rolling")).isEqualTo(Operation.Basis.LAYER_AREA);
        assertThat(time(labour, "cleaning up")).isEqualTo(Operation.Basis.STAGE);
        assertThat(time(labour, "drilling")).isEqualTo(Operation.Basis.ITEM);
        assertThat(labour.operations()).hasSize(Operation.USUAL.size() + 5);
    }

    private static Operation operation(Labour labour, String name) {
        return labour.operations().stream()
                .filter(operation -> operation.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Operation.Basis time(Labour labour, String name) {
        return operation(labour, name).basis();
    }

    @Test
    void consumablesAreListedOrAShare() {
        List<ConsumableUse> uses = read("""
                consumables:
                  - {material: peel-ply, amount: 1.15 m², per: m²}
                  - {material: acetone, amount: 150 ml, per: kg resin}
                  - {material: gloves, amount: 2 pieces, per: moulding}
                  - {material: acetone, amount: 0.5 kg, per: m edge}
                  - {material: peel-ply, amount: 250 cm, per: m²}
                """).workshop().consumables().uses(Process.INFUSION);
        assertThat(uses)
                .extracting(ConsumableUse::measure)
                .containsExactly(PriceBasis.M2, PriceBasis.LITRE, PriceBasis.PIECE, PriceBasis.KG, PriceBasis.M);
        assertThat(uses).extracting(use -> use.amount().value()).containsExactly(1.15, 0.15, 2.0, 0.5, 2.5);
        assertThat(uses)
                .extracting(ConsumableUse::basis)
                .containsExactly(
                        ConsumableUse.Basis.AREA,
                        ConsumableUse.Basis.RESIN,
                        ConsumableUse.Basis.MOULDING,
                        ConsumableUse.Basis.EDGE,
                        ConsumableUse.Basis.AREA);
        assertThat(read("consumables: 7 %\n").workshop().consumables().share()).hasValue(0.07);
    }

    @Test
    void theTermsOfAQuoteAreRead() {
        Terms terms = read("""
                labour: {rate: 28 GBP/h, paid: 1.2, learning: {rate: 90 %, counted-on: 5}, cure: 16 h}
                pricing:
                  rejects: 5 %
                  overhead: {rate: 100 %, on: labour}
                  contingency: 4 %
                  margin: 25 %
                  discount: 2.5 %
                  tax: {name: VAT, rate: 20 %}
                """).terms().orElseThrow();
        assertThat(terms)
                .isEqualTo(new Terms(
                        new Pricing(
                                0.05,
                                new Overhead(1, Overhead.Base.LABOUR),
                                0.04,
                                new Profit.Margin(0.25),
                                0.025,
                                Optional.of(new Tax("VAT", 0.2))),
                        new LearningCurve(0.9, 5),
                        1.2,
                        16 * 3600));
    }

    @Test
    void termsAreThoseOfAWorkshopThatStatesPricing() {
        assertThat(read("labour: {paid: 1.2, cure: 1 day}\n").terms()).isEmpty();
        assertThat(read("pricing: {mark-up: 33 %}\n").terms())
                .contains(new Terms(Pricing.AT_COST.withProfit(new Profit.MarkUp(0.33)), LearningCurve.NONE, 1, 0));
        assertThat(read("pricing: {overhead: {rate: 30 %, on: direct cost}}\nlabour: {learning: {rate: 80 %}}\n")
                        .terms())
                .contains(new Terms(
                        Pricing.AT_COST.withOverhead(new Overhead(0.3, Overhead.Base.DIRECT_COST)),
                        new LearningCurve(0.8, 1),
                        1,
                        0));
    }

    @Test
    void theWordsOfAQuotationAreRead() {
        QuotationText text = read("""
                quotation:
                  yard: [Lake Yard, "Boathouse Lane 1"]
                  exclusions: carriage
                  valid-for: 30 d
                """).quotation();
        assertThat(text)
                .isEqualTo(new QuotationText(
                        List.of("Lake Yard", "Boathouse Lane 1"),
                        List.of(),
                        List.of("carriage"),
                        List.of(),
                        OptionalDouble.of(30 * 86_400)));
        assertThat(text.validDays()).isEqualTo(30);
        assertThat(read("temperature: 18 °C\n").quotation()).isEqualTo(QuotationText.NONE);
    }

    @Test
    void theShopFloorIsRead() {
        ShopFloor own = read("""
                labour: {rate: 28 GBP/h, crew: 3}
                mixing: {usable-share: 60 %, resin-scale: 10 g, agent-scale: 1 g, pump-stroke: 10 ml, largest-mix: 1.5 kg, mixing-time: 3 min}
                working-day: {start: 8:30, length: 7.5 h}
                styrene-limit: 426 mg/m³
                """).workshop().shopFloor();
        assertThat(own)
                .isEqualTo(new ShopFloor(
                        3,
                        new Mixing(
                                Figure.stated(0.6),
                                0.01,
                                0.001,
                                OptionalDouble.of(1e-5),
                                OptionalDouble.of(1.5),
                                Figure.stated(180)),
                        new WorkingDay(LocalTime.of(8, 30), 27_000),
                        Optional.of(Figure.stated(426e-6))));
    }

    @Test
    void theShopFloorIsUsualWhereNothingIsStated() {
        assertThat(read("mixing: {largest-mix: 1 kg}\nworking-day: {start: 07:00}\n")
                        .workshop()
                        .shopFloor())
                .isEqualTo(new ShopFloor(
                        1,
                        new Mixing(
                                Mixing.USUAL.usableShare(),
                                0.005,
                                1e-4,
                                OptionalDouble.empty(),
                                OptionalDouble.of(1),
                                Mixing.USUAL.mixingTime()),
                        new WorkingDay(LocalTime.of(7, 0), WorkingDay.USUAL.length()),
                        Optional.empty()));
        assertThat(read("temperature: 20 °C\n").workshop().shopFloor()).isEqualTo(ShopFloor.USUAL);
    }

    @Test
    void micromechanicsAndKnockDownsAreRead() {
        StiffnessBasis own = read("micromechanics: rule-of-mixtures\nknock-down: {mat: 90 %}\n")
                .workshop()
                .stiffness();
        assertThat(own.model()).isEqualTo(Micromechanics.RULE_OF_MIXTURES);
        assertThat(own.mat().value()).isEqualTo(0.9);
        assertThat(own.woven()).isEqualTo(StiffnessBasis.USUAL.woven());
        assertThat(read("micromechanics: marine-rule\n").workshop().stiffness())
                .isEqualTo(StiffnessBasis.usual(Micromechanics.MARINE_RULE));
    }
}
