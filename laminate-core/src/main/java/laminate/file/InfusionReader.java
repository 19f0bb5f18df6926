package laminate.file;

import static laminate.file.Reading.choice;
import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.number;
import static laminate.file.Scalars.oneOf;
import static laminate.file.Scalars.orNone;
import static laminate.file.Scalars.quantity;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import laminate.part.infusion.BedCompaction;
import laminate.part.infusion.FeedKind;
import laminate.part.infusion.FeedLines;
import laminate.part.infusion.InfusionPath;
import laminate.part.infusion.InfusionPlan;
import laminate.part.infusion.LeakTest;
import laminate.part.infusion.PermeabilitySource;
import laminate.part.infusion.Preform;
import laminate.part.infusion.ResinViscosity;
import laminate.part.infusion.Segment;
import laminate.part.infusion.StripTest;
import laminate.process.flow.FlowMesh;
import laminate.process.flow.Hose;
import laminate.unit.Dimension;
import laminate.unit.Quantity;
import laminate.unit.Unit;

/** Reads how a part or a zone is infused. */
final class InfusionReader {

    private static final Reading<Double> LENGTH = quantity(Dimension.LENGTH, Bounds.POSITIVE);
    private static final Reading<Double> TIME = quantity(Dimension.TIME, Bounds.POSITIVE);
    private static final Reading<Double> PRESSURE = quantity(Dimension.PRESSURE, Bounds.POSITIVE);
    private static final Reading<Double> VISCOSITY = quantity(Dimension.VISCOSITY, Bounds.POSITIVE);
    private static final Reading<Double> SHARE =
            quantity(Dimension.FRACTION, Bounds.inside(0, 1, "above 0 % and below 100 %"));
    private static final Reading<Double> MARGIN =
            quantity(Dimension.FRACTION, Bounds.above(0, 1, "above 0 % and up to 100 %"));
    /** Beyond a square of 1 mm there is no bed of fibres any more. */
    private static final Reading<Double> SQUARE_METRES = quantity(
            Dimension.PERMEABILITY,
            Bounds.above(0, 1e-6, "more than zero and up to 1e-6 m²; laminates have about 1e-12 to 1e-8 m²"));

    private static final List<Reading.Choice<Double>> DRIVEN = List.of(
            choice(
                    "vacuum",
                    quantity(
                            Dimension.PRESSURE,
                            Bounds.above(
                                    0,
                                    101_325,
                                    "more than zero and up to 1013 mbar, as it is told from the atmosphere down"))),
            choice(
                    "driving-pressure",
                    quantity(Dimension.PRESSURE, Bounds.above(0, 1e6, "more than zero and up to 10 bar"))));

    private static final String FEED_RADIUS = "feed-radius";
    private static final String PERMEABILITY_AT = "permeability-at";
    private static final String TYPICAL = "typical";
    private static final double ROUNDING = 1e-6;

    private InfusionReader() {}

    /**
     * A plan with what is checked once the layers are known.
     *
     * @param plan the plan
     * @param porosity the porosity as it is stated
     */
    record Stated(InfusionPlan plan, Optional<Located<Double>> porosity) {}

    static Reading<Stated> infusion() {
        return mapping(Keys.INFUSION, InfusionReader::infusion);
    }

    private static Stated infusion(Fields in) {
        var feed = in.required("feed", oneOf(FeedKind::word, FeedKind.values()));
        var length = in.required("flow-length", LENGTH);
        var path = path(in, feed, length);
        var pressure = in.exactlyOne(DRIVEN);
        var viscosity = viscosity(in);
        var porosity = in.optional("porosity", Located.of(SHARE));
        var preform = preform(in, porosity, length);
        var mesh = in.optional("mesh", mapping(Keys.MESH, InfusionReader::mesh));
        var lines = lines(in);
        var margin = in.optional("margin", MARGIN);
        var leak = in.optional("leak", mapping(Keys.LEAK, InfusionReader::leak));
        checkFeed(in, feed.value());
        in.requireSound();
        InfusionPlan plan = new InfusionPlan(
                path.get(),
                pressure.get(),
                viscosity.get(),
                preform.get(),
                mesh.get(),
                lines.get(),
                orNone(margin.get()),
                leak.get());
        return new Stated(plan, porosity.get());
    }

    private static Supplier<InfusionPath> path(Fields in, Promise<FeedKind> feed, Promise<Double> length) {
        var radius = in.optional(FEED_RADIUS, LENGTH);
        var rise = in.orElse("rise", quantity(Dimension.LENGTH), 0.0);
        Optional<Double> stated = radius.value().orElse(Optional.empty());
        boolean rim = feed.value().isPresent() && feed.value().get() == FeedKind.RIM;
        if (rim
                && stated.isPresent()
                && length.value().isPresent()
                && length.value().get() > stated.get()) {
            in.complain(
                    "flow-length",
                    "this is longer than the radius of the rim; the resin runs from the rim inwards,"
                            + " up to feed-radius is accepted");
        }
        if (rise.value().isPresent()
                && length.value().isPresent()
                && Math.abs(rise.value().get()) > length.value().get()) {
            in.complain(
                    "rise",
                    "the vent cannot lie further above or below the feed than it is away; up to flow-length is accepted");
        }
        return () -> new InfusionPath(feed.get(), length.get(), orNone(radius.get()), rise.get());
    }

    /** What belongs to one way of feeding and stands with another, or is missing with its own. */
    private static void checkFeed(Fields in, Optional<FeedKind> stated) {
        if (stated.isEmpty()) {
            return;
        }
        FeedKind feed = stated.get();
        if (feed == FeedKind.LINE && in.stands(FEED_RADIUS)) {
            in.complain(FEED_RADIUS, "a line feed has no radius; take it out, or feed: centre or rim is wanted");
        }
        if (feed != FeedKind.LINE && !in.stands(FEED_RADIUS)) {
            in.complain(
                    "feed",
                    feed.word() + " wants the radius of "
                            + (feed == FeedKind.RIM ? "the rim" : "the port or ring that feeds")
                            + "; add feed-radius:");
        }
        if (feed != FeedKind.CENTRE && in.stands("cross-permeability")) {
            in.complain(
                    "cross-permeability",
                    "only from a centre feed does resin run across as well; take it out, or feed: centre is wanted");
        }
    }

    private static Supplier<ResinViscosity> viscosity(Fields in) {
        var atStart = in.optional("viscosity", VISCOSITY);
        var riseTime = in.optional("viscosity-time", TIME);
        return () -> new ResinViscosity(orNone(atStart.get()), orNone(riseTime.get()));
    }

    private static Supplier<Preform> preform(
            Fields in, Promise<Optional<Located<Double>>> porosity, Promise<Double> length) {
        var permeability = permeability(in);
        var cross = in.optional("cross-permeability", SQUARE_METRES);
        var through = in.optional("through-permeability", SQUARE_METRES);
        var compaction = in.optional("compaction", mapping(Keys.COMPACTION, InfusionReader::compaction));
        var segments =
                in.orElse("segments", listOf(mapping(Keys.SEGMENT, InfusionReader::segment)), List.<Segment>of());
        checkSegments(in, segments.value().orElse(List.of()), length.value());
        checkPermeability(in, segments.value());
        return () -> new Preform(
                orNone(porosity.get().map(Located::value)),
                permeability.get(),
                orNone(cross.get()),
                orNone(through.get()),
                compaction.get(),
                segments.get());
    }

    private static Supplier<Optional<PermeabilitySource>> permeability(Fields in) {
        var stated = in.<PermeabilitySource>atMostOne(List.of(
                choice("permeability", new KnownOrTypical()),
                choice("strip-test", mapping(Keys.STRIP_TEST, InfusionReader::stripTest))));
        var measuredAt = in.optional(PERMEABILITY_AT, SHARE);
        return () -> {
            if (measuredAt.get().isEmpty()) {
                return stated.get();
            }
            if (stated.get().isPresent() && stated.get().get() instanceof PermeabilitySource.Given given) {
                return Optional.of(new PermeabilitySource.Given(given.value(), orNone(measuredAt.get())));
            }
            throw in.refusal(PERMEABILITY_AT, "this goes with a measured permeability:, as in 1e-10 m²; take it out");
        };
    }

    /** A value, or the word for an order of magnitude. */
    private static final class KnownOrTypical implements Reading<PermeabilitySource> {

        private final Reading<PermeabilitySource> known = SQUARE_METRES.map(PermeabilitySource.Given::of);

        @Override
        public Optional<PermeabilitySource> read(Node node, Complaints complaints) {
            boolean typical =
                    node instanceof Node.Scalar scalar && scalar.text().strip().equals(TYPICAL);
            return typical ? Optional.of(new PermeabilitySource.Typical()) : known.read(node, complaints);
        }
    }

    /** Nothing is assumed of a permeability: a wrong one spoils a moulding. */
    private static void checkPermeability(Fields in, Optional<List<Segment>> segments) {
        if (in.stands("permeability") || in.stands("strip-test") || segments.isEmpty()) {
            return;
        }
        boolean told = !segments.get().isEmpty();
        for (Segment segment : segments.get()) {
            told &= segment.permeability().isPresent();
        }
        if (!told) {
            in.missing(
                    List.of("permeability", "strip-test"),
                    "nothing tells how permeable the layers are; permeability: with a value as in 1e-10 m², strip-test:"
                            + " with its length and time, or permeability: typical is wanted");
        }
    }

    private static void checkSegments(Fields in, List<Segment> segments, Optional<Double> length) {
        double sum = 0;
        for (Segment segment : segments) {
            sum += segment.length();
        }
        if (!segments.isEmpty() && length.isPresent() && Math.abs(sum - length.get()) > ROUNDING * length.get()) {
            in.complain(
                    "segments",
                    "together they are " + metres(sum) + " long; the flow-length is wanted, " + metres(length.get()));
        }
    }

    private static Quantity metres(double length) {
        return Quantity.ofSi(length, Unit.METRE);
    }

    private static PermeabilitySource stripTest(Fields in) {
        var length = in.required("length", LENGTH);
        var time = in.required("time", TIME);
        var viscosity = in.optional("viscosity", VISCOSITY);
        var pressure = in.atMostOne(DRIVEN);
        var porosity = in.optional("porosity", SHARE);
        in.requireSound();
        return new PermeabilitySource.Tested(new StripTest(
                length.get(), time.get(), orNone(viscosity.get()), orNone(pressure.get()), orNone(porosity.get())));
    }

    private static Segment segment(Fields in) {
        var length = in.required("length", LENGTH);
        var permeability = in.optional("permeability", SQUARE_METRES);
        var porosity = in.optional("porosity", SHARE);
        in.requireSound();
        return new Segment(length.get(), orNone(permeability.get()), orNone(porosity.get()));
    }

    private static BedCompaction compaction(Fields in) {
        var exponent = in.required("exponent", number(Bounds.inside(0, 1, "a number above 0 and below 1")));
        var least = in.optional("least-pressure", PRESSURE);
        in.requireSound();
        return new BedCompaction(exponent.get(), orNone(least.get()));
    }

    private static FlowMesh mesh(Fields in) {
        var thickness = in.required("thickness", LENGTH);
        var permeability = in.required("permeability", SQUARE_METRES);
        var porosity = in.required("porosity", SHARE);
        in.requireSound();
        return new FlowMesh(thickness.get(), permeability.get(), porosity.get());
    }

    private static Supplier<FeedLines> lines(Fields in) {
        Reading<Hose> tube = mapping(Keys.HOSE, InfusionReader::hose);
        var hose = in.optional("hose", tube);
        var spiral = in.optional("spiral", tube);
        var pot = in.optional("catch-pot", quantity(Dimension.MASS, Bounds.NOT_NEGATIVE));
        return () -> new FeedLines(hose.get(), spiral.get(), orNone(pot.get()));
    }

    private static Hose hose(Fields in) {
        var bore = in.required("bore", LENGTH);
        var length = in.required("length", LENGTH);
        in.requireSound();
        return new Hose(bore.get(), length.get());
    }

    private static LeakTest leak(Fields in) {
        var drop = in.required("drop", PRESSURE);
        var time = in.required("time", TIME);
        in.requireSound();
        return new LeakTest(drop.get(), time.get());
    }
}
