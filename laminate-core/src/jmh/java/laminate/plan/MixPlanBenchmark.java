package laminate.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import laminate.estimate.Estimator;
import laminate.estimate.PartEstimate;
import laminate.material.Agent;
import laminate.material.Fibre;
import laminate.material.FibrePly;
import laminate.material.Figure;
import laminate.material.Figures;
import laminate.material.Form;
import laminate.material.MaterialKind;
import laminate.material.Property;
import laminate.material.Reinforcement;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.part.Layer;
import laminate.part.Part;
import laminate.part.ReinforcementLayer;
import laminate.part.Zone;
import laminate.process.Dose;
import laminate.process.LayUp;
import laminate.process.Process;
import laminate.process.Workshop;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A mixing plan for 500 layers of mat in ten zones, with its job sheet; it is to take less than 50 ms. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class MixPlanBenchmark {
    private static final int ZONES = 10;
    private static final int LAYERS = 50;

    private final Workshop workshop = Workshop.USUAL.withTemperature(293.15);
    private final PartEstimate estimate = new Estimator(workshop).estimate(part());

    /** Stages, mixes and clock of an estimated part. */
    @Benchmark
    public MixPlan plan() {
        return new MixPlanner(workshop).plan(estimate);
    }

    /** The same with its job sheet. */
    @Benchmark
    public JobSheet jobSheet() {
        return JobSheet.of(new MixPlanner(workshop).plan(estimate));
    }

    private static Part part() {
        Agent peroxide =
                new Agent("mekp", "mekp", MaterialKind.CATALYST, Figures.none().with(Property.DENSITY, 1170));
        LayUp layUp = new LayUp(Process.HAND_LAY_UP, polyester(), new Dose(peroxide, 0.015));
        List<Zone> zones = new ArrayList<>();
        for (int i = 0; i < ZONES; i++) {
            List<Layer> layers = new ArrayList<>();
            for (int j = 0; j < LAYERS; j++) {
                layers.add(new ReinforcementLayer(mat(), 0, false, layUp, Optional.empty(), j < 10 ? "skin" : ""));
            }
            zones.add(Zone.of("zone " + i, 0.5 + i, layers));
        }
        return Part.of("thick", zones);
    }

    private static Reinforcement mat() {
        Fibre glass = new Fibre(
                "e-glass",
                "e-glass",
                Fibre.Type.GLASS,
                Figures.none()
                        .with(Property.DENSITY, 2560)
                        .with(Property.E1, 72.4e9)
                        .with(Property.E2, 72.4e9)
                        .with(Property.G12, 29.67e9)
                        .with(Property.NU12, 0.22)
                        .with(Property.ALPHA1, 5.3e-6)
                        .with(Property.ALPHA2, 5.3e-6)
                        .with(Property.TENSILE_STRENGTH, 2e9));
        return new Reinforcement(
                "mat-450",
                "mat-450",
                Form.MAT,
                List.of(FibrePly.of(glass, Form.MAT, 0, 0.45)),
                Optional.of(Reinforcement.Binder.POWDER),
                Figures.none().with(Property.AREAL_WEIGHT, 0.45).with(Property.ROLL_WIDTH, 1.25),
                Optional.empty());
    }

    private static Resin polyester() {
        return new Resin(
                "polyester",
                "polyester",
                Resin.Family.POLYESTER,
                Resin.Use.LAMINATING,
                false,
                Figures.none()
                        .with(Property.DENSITY_LIQUID, 1110)
                        .with(Property.DENSITY_CURED, 1200)
                        .with(Property.E, 3.3e9)
                        .with(Property.NU, 0.36)
                        .with(Property.ALPHA, 60e-6)
                        .with(Property.STYRENE_CONTENT, 0.42)
                        .with(Property.STAGE_THICKNESS, 0.005),
                List.of(new Resin.Cure("mekp", Figure.stated(0.015), Figure.stated(0.01), Figure.stated(0.03))),
                List.of(point(0.01, 15, 52.5), point(0.01, 25, 20.5), point(0.02, 15, 28.5), point(0.02, 25, 11)));
    }

    private static Resin.GelPoint point(double dose, double celsius, double minutes) {
        return new Resin.GelPoint("mekp", dose, 273.15 + celsius, new Figure(minutes * 60, "bench", Status.MEMORY));
    }
}
