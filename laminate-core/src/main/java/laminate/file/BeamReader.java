package laminate.file;

import static laminate.file.Reading.choice;
import static laminate.file.Reading.later;
import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.name;
import static laminate.file.Scalars.oneOf;
import static laminate.file.Scalars.orNone;
import static laminate.file.Scalars.quantity;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import laminate.part.BeamPlan;
import laminate.part.Limits;
import laminate.theory.beam.BeamLoad;
import laminate.theory.beam.Supports;
import laminate.unit.Dimension;

/** Reads the beams and strips of a part. */
final class BeamReader {

    private static final Reading<Double> LENGTH = quantity(Dimension.LENGTH, Bounds.POSITIVE);
    private static final String FORCE = "force";
    private static final String LINE_LOAD = "line-load";

    private final ZoneNames zones;
    private final Set<String> taken = new HashSet<>();

    BeamReader(ZoneNames zones) {
        this.zones = zones;
    }

    /** How a beam is held and loaded, and whether by a force, by a line load or by either. */
    enum Loading {
        THREE_POINT(FORCE),
        FOUR_POINT(FORCE),
        CANTILEVER(FORCE, LINE_LOAD),
        UNIFORM(LINE_LOAD);

        private final List<String> loads;

        Loading(String... loads) {
            this.loads = List.of(loads);
        }

        String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        Supports supports() {
            return this == CANTILEVER ? Supports.CANTILEVER : Supports.SIMPLY_SUPPORTED;
        }
    }

    /** What is stated of a load. */
    private record Stated(String key, double value) {}

    Reading<List<BeamPlan>> beams() {
        return listOf(mapping(Keys.BEAM, this::beam));
    }

    private BeamPlan beam(Fields in) {
        var name = in.required("name", name(taken));
        var zone = in.required("zone", zones.known());
        var along = in.orElse("direction", oneOf(BeamPlan.Along::word, BeamPlan.Along.values()), BeamPlan.Along.X);
        var span = in.required("span", LENGTH);
        var width = in.required("width", LENGTH);
        var loading = in.required("loading", oneOf(Loading::word, Loading.values()));
        var load =
                in.exactlyOne(List.of(stated(FORCE, Dimension.FORCE), stated(LINE_LOAD, Dimension.FORCE_PER_LENGTH)));
        var loadSpan = in.optional("load-span", LENGTH);
        var bearing = in.optional("bearing-length", LENGTH);
        var limits = in.orElse("limits", later(() -> LimitsReader.limits()), Limits.NONE);
        in.requireSound();
        return new BeamPlan(
                name.get(),
                zone.get(),
                along.get(),
                span.get(),
                width.get(),
                loading.get().supports(),
                load(in, loading.get(), load.get(), span.get(), loadSpan.get()),
                orNone(bearing.get()),
                limits.get());
    }

    private static Reading.Choice<Stated> stated(String key, Dimension dimension) {
        return choice(key, quantity(dimension).map(value -> new Stated(key, value)));
    }

    private static BeamLoad load(Fields in, Loading loading, Stated load, double span, Optional<Double> loadSpan) {
        if (!loading.loads.contains(load.key())) {
            throw in.refusal(
                    load.key(),
                    "loading: " + loading.word() + " takes no " + load.key() + "; " + loading.loads.get(0)
                            + ": is wanted");
        }
        if (loading != Loading.FOUR_POINT) {
            in.refuseAnyOf(List.of("load-span"), "this goes with loading: four-point; take it out");
        }
        return switch (loading) {
            case THREE_POINT -> BeamLoad.threePoint(load.value(), span);
            case FOUR_POINT -> BeamLoad.fourPoint(load.value(), span, loadSpan(in, span, loadSpan));
            case CANTILEVER ->
                load.key().equals(FORCE) ? BeamLoad.at(load.value(), span) : BeamLoad.uniform(load.value());
            case UNIFORM -> BeamLoad.uniform(load.value());
        };
    }

    private static double loadSpan(Fields in, double span, Optional<Double> stated) {
        double distance = stated.orElseThrow(
                () -> in.refusal("loading", "four-point wants the distance between its two loads; add load-span:"));
        if (!(distance < span)) {
            throw in.refusal("load-span", "the loads are as far apart as the supports; less than the span is wanted");
        }
        return distance;
    }
}
