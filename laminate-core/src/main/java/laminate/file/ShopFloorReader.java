package laminate.file;

import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.decimal;
import static laminate.file.Scalars.orNone;
import static laminate.file.Scalars.quantity;

import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.Optional;
import laminate.material.Figure;
import laminate.process.Mixing;
import laminate.process.WorkingDay;
import laminate.process.cure.Styrene;
import laminate.unit.DateText;
import laminate.unit.Dimension;
import laminate.unit.Quantity;
import laminate.unit.Significant;

/** Reads how a workshop mixes, its working day and its limit of styrene in the air. */
final class ShopFloorReader {

    private static final Reading<Double> MASS = quantity(Dimension.MASS, Bounds.POSITIVE);
    private static final String PPM = "ppm";
    private static final double DAY = 24 * 3600;

    private ShopFloorReader() {}

    static Reading<Mixing> mixing() {
        return mapping(Keys.MIXING, ShopFloorReader::mixing);
    }

    private static Mixing mixing(Fields in) {
        var share = in.optional(
                "usable-share", quantity(Dimension.FRACTION, Bounds.above(0, 1, "above 0 % and up to 100 %")));
        var resinStep = in.orElse("resin-scale", MASS, Mixing.USUAL.resinStep());
        var agentStep = in.orElse("agent-scale", MASS, Mixing.USUAL.agentStep());
        var stroke = in.optional("pump-stroke", quantity(Dimension.VOLUME, Bounds.POSITIVE));
        var largest = in.optional("largest-mix", MASS);
        var time = in.optional("mixing-time", quantity(Dimension.TIME, Bounds.NOT_NEGATIVE));
        in.requireSound();
        return new Mixing(
                stated(share.get()).orElse(Mixing.USUAL.usableShare()),
                resinStep.get(),
                agentStep.get(),
                orNone(stroke.get()),
                orNone(largest.get()),
                stated(time.get()).orElse(Mixing.USUAL.mixingTime()));
    }

    private static Optional<Figure> stated(Optional<Double> value) {
        return value.map(Figure::stated);
    }

    static Reading<WorkingDay> workingDay() {
        return mapping(Keys.WORKING_DAY, ShopFloorReader::workingDay);
    }

    private static WorkingDay workingDay(Fields in) {
        var start = in.orElse("start", timeOfDay(), WorkingDay.USUAL.start());
        var length = in.orElse(
                "length",
                quantity(Dimension.TIME, Bounds.above(0, DAY, "more than zero and up to 24 h")),
                WorkingDay.USUAL.length());
        in.requireSound();
        return new WorkingDay(start.get(), length.get());
    }

    private static Reading<LocalTime> timeOfDay() {
        return new ScalarReading<>() {
            @Override
            LocalTime of(String text) {
                try {
                    return DateText.timeOfDay(text.strip());
                } catch (DateTimeException e) {
                    throw new IllegalArgumentException(
                            Complaints.shown(text) + " is no time of day; one as in 08:00 is accepted, 00:00 to 23:59");
                }
            }
        };
    }

    static Reading<Figure> styreneLimit() {
        return Bounds.above(0, 0.01, "more than zero and up to 10000 mg/m³; a limit is some 50 to 500 mg/m³")
                .limit(concentration())
                .map(Figure::stated);
    }

    /** Limits are often told in parts per million, whose mass depends on the temperature they are told at. */
    private static Reading<Double> concentration() {
        return new ScalarReading<>() {
            @Override
            Double of(String text) {
                String limit = text.strip();
                if (limit.endsWith(PPM)) {
                    String number = limit.substring(0, limit.length() - PPM.length());
                    double mass = Styrene.ofPartsPerMillion(decimal(number.strip()));
                    throw new IllegalArgumentException(Complaints.shown(text)
                            + " is a share of the volume; a mass by volume is accepted: 1 ppm of styrene is "
                            + Significant.format(Styrene.PPM * 1e6, 3) + " mg/m³ at 25 °C and 1013 mbar, so write "
                            + Significant.format(mass * 1e6, 3) + " mg/m³");
                }
                return Quantity.parse(text, Dimension.DENSITY);
            }
        };
    }
}
