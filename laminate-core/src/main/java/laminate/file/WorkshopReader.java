package laminate.file;

import static laminate.file.Reading.later;
import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.orNone;
import static laminate.file.Scalars.quantity;
import static laminate.file.Scalars.word;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import laminate.material.Figure;
import laminate.process.ContentRule;
import laminate.process.ContentSet;
import laminate.process.Loss;
import laminate.process.Mixing;
import laminate.process.Process;
import laminate.process.ShopFloor;
import laminate.process.StiffnessBasis;
import laminate.process.StrengthBasis;
import laminate.process.WorkingDay;
import laminate.process.Workshop;
import laminate.quote.QuotationText;
import laminate.quote.Terms;
import laminate.quote.price.Pricing;
import laminate.theory.Micromechanics;
import laminate.unit.Dimension;

/** Reads workshop files. */
final class WorkshopReader {

    private static final Reading<Double> TEMPERATURE =
            quantity(Dimension.TEMPERATURE, Bounds.between(253.15, 333.15, "-20 °C to 60 °C"));
    private static final Reading<Figure> SHARE = stated(Dimension.FRACTION, Bounds.between(0, 1, "0 % to 100 %"));
    private static final Reading<Figure> SMALL_SHARE =
            stated(Dimension.FRACTION, Bounds.below(0, 0.5, "0 % to below 50 %"));
    private static final Reading<Figure> FACTOR =
            stated(Dimension.FRACTION, Bounds.above(0, 1, "above 0 % and up to 100 %"));
    private static final String SPRAY = "spray";

    private final Stock stock;
    private final Optional<String> currency;

    /**
     * Makes a reader.
     *
     * @param stock where consumables are found
     * @param currency the currency of the price list, if there is one: that of the labour rate must be the same
     */
    WorkshopReader(Stock stock, Optional<String> currency) {
        this.stock = stock;
        this.currency = currency;
    }

    /** Fibre contents: a set by its name, or rules of the workshop's own. */
    private record Contained(Optional<ContentSet> set, List<ContentRule> rules) {}

    Reading<WorkshopFile> workshop() {
        return mapping(Keys.WORKSHOP, this::workshop);
    }

    private WorkshopFile workshop(Fields in) {
        var temperature = in.optional("temperature", TEMPERATURE);
        Term<Contained> contents = in.stated("fibre-content", contents());
        Optional<ContentSet> set = Contents.set(in, named(contents), contents.flawed());
        var voids = byProcess(in, "voids", SMALL_SHARE);
        var losses = byProcess(in, "loss", mapping(Keys.LOSS, WorkshopReader::losses));
        var gelcoat = in.orElse("gelcoat-application", word(List.of("brush", SPRAY)), "brush");
        var evaporation = byProcess(in, "evaporation", SMALL_SHARE);
        WorkReader work = new WorkReader(stock, currency);
        var labour = work.labour(in);
        var consumables = work.consumables(in);
        var pricing = in.optional("pricing", later(() -> PricingReader.pricing()));
        var quotation = in.orElse("quotation", later(() -> PricingReader.quotation()), QuotationText.NONE);
        var mixing = in.orElse("mixing", later(() -> ShopFloorReader.mixing()), Mixing.USUAL);
        var day = in.orElse("working-day", later(() -> ShopFloorReader.workingDay()), WorkingDay.USUAL);
        var styrene = in.optional("styrene-limit", later(() -> ShopFloorReader.styreneLimit()));
        var micromechanics = in.orElse("micromechanics", Words.micromechanics(), Micromechanics.HALPIN_TSAI);
        var knockDown = in.optional("knock-down", mapping(Keys.KNOCK_DOWN, WorkshopReader::knockDown));
        var strength = in.orElse("strength", Words.strengthBasis(), StrengthBasis.LIBRARY);
        in.requireSound();
        return new WorkshopFile(
                new Workshop(
                        orNone(temperature.get()),
                        rules(contents),
                        voids.get(),
                        losses.get(),
                        gelcoat.get().equals(SPRAY),
                        evaporation.get(),
                        labour.get().labour(),
                        consumables.get(),
                        stiffness(micromechanics.get(), knockDown.get()),
                        strength.get(),
                        new ShopFloor(labour.get().crew(), mixing.get(), day.get(), styrene.get())),
                set.orElse(ContentSet.TRADE),
                pricing.get().map(rates -> terms(rates, labour.get())),
                quotation.get());
    }

    private static Terms terms(Pricing pricing, WorkReader.Hands hands) {
        return new Terms(pricing, hands.learning(), hands.paid(), hands.cure());
    }

    private static Optional<ContentSet> named(Term<Contained> contents) {
        return contents.stated().isPresent() ? contents.stated().get().value().set() : Optional.empty();
    }

    private static List<ContentRule> rules(Term<Contained> contents) {
        return contents.stated().isPresent() ? contents.stated().get().value().rules() : List.of();
    }

    private static Reading<Contained> contents() {
        return Reading.shortOrFull(
                Contents.setByName().map(set -> new Contained(Optional.of(set), List.of())),
                listOf(mapping(Keys.CONTENT_RULE, WorkshopReader::rule))
                        .map(rules -> new Contained(Optional.empty(), rules)));
    }

    private static ContentRule rule(Fields in) {
        var process = in.optional("process", Words.PROCESS);
        var form = in.optional("kind", Words.FORM);
        var fibre = in.optional("fibre", Words.OfMaterials.FIBRE);
        var family = in.optional("resin", Words.OfMaterials.FAMILY);
        var content = in.exactlyOne(Contents.OF_ANY_LAYER);
        in.requireSound();
        return new ContentRule(
                process.get(),
                form.get(),
                fibre.get(),
                family.get(),
                content.get().value());
    }

    private static Map<Loss, Figure> losses(Fields in) {
        Map<Loss, Promise<Optional<Figure>>> read = new EnumMap<>(Loss.class);
        for (Loss loss : Loss.values()) {
            read.put(loss, in.optional(loss.key(), ofLoss(loss)));
        }
        in.requireSound();
        Map<Loss, Figure> figures = new EnumMap<>(Loss.class);
        for (Loss loss : read.keySet()) {
            Optional<Figure> stated = read.get(loss).get();
            if (stated.isPresent()) {
                figures.put(loss, stated.get());
            }
        }
        return figures;
    }

    private static Reading<Figure> ofLoss(Loss loss) {
        return loss.dimension() == Dimension.FRACTION ? SHARE : stated(loss.dimension(), Bounds.NOT_NEGATIVE);
    }

    private static StiffnessBasis stiffness(Micromechanics model, Optional<KnockDown> own) {
        StiffnessBasis usual = StiffnessBasis.usual(model);
        return own.isPresent() ? own.get().over(usual) : usual;
    }

    private record KnockDown(Optional<Figure> mat, Optional<Figure> woven) {

        StiffnessBasis over(StiffnessBasis usual) {
            return new StiffnessBasis(usual.model(), mat.orElse(usual.mat()), woven.orElse(usual.woven()));
        }
    }

    private static KnockDown knockDown(Fields in) {
        var mat = in.optional("mat", FACTOR);
        var woven = in.optional("woven", FACTOR);
        in.requireSound();
        return new KnockDown(mat.get(), woven.get());
    }

    private static <V> Promise<Map<Process, V>> byProcess(Fields in, String key, Reading<V> value) {
        return in.orElse(key, mapOf(Words.PROCESS, value), Map.of());
    }

    private static Reading<Figure> stated(Dimension dimension, Bounds range) {
        return quantity(dimension, range).map(Figure::stated);
    }
}
