package laminate.cli;

import java.util.List;
import java.util.Locale;
import laminate.compare.Basis;
import laminate.compare.CompareOptions;
import laminate.compare.Means;
import laminate.compare.SideBySide;
import laminate.material.Materials;
import laminate.print.MarkdownPrinter;
import laminate.print.Printer;
import laminate.print.TextPrinter;
import laminate.print.compare.CompareCsv;
import laminate.print.compare.CompareJson;
import laminate.print.compare.CompareReport;
import laminate.theory.Equivalence.Stiffness;
import picocli.CommandLine.Model.OptionSpec;

/** {@code laminate compare}: a part by several processes, resins or schedules, or several parts, side by side. */
final class CompareCommand extends Command {
    static final String NAME = "compare";

    /** What is held equal, by the word of the command line. */
    private enum Same {
        REINFORCEMENT(Basis.SAME_REINFORCEMENT),
        STIFFNESS(Basis.SAME_STIFFNESS),
        WEIGHT(Basis.SAME_WEIGHT);

        private final Basis basis;

        Same(Basis basis) {
            this.basis = basis;
        }
    }

    /** What is changed until it is equal. */
    private enum By {
        WEIGHTS(Means.REINFORCEMENT),
        CORE(Means.CORE);

        private final Means means;

        By(Means means) {
            this.means = means;
        }
    }

    /** Along which axis the bending stiffness is made equal. */
    private enum Along {
        X(Stiffness.BENDING_X),
        Y(Stiffness.BENDING_Y);

        private final Stiffness stiffness;

        Along(Stiffness stiffness) {
            this.stiffness = stiffness;
        }
    }

    private final CompareInput ways;
    private final OptionSpec same = option(
            "--same",
            "WHAT",
            new Words<>(Same.values(), CompareCommand::word),
            "What is held equal: reinforcement (the default), stiffness or weight, zone by zone.");
    private final OptionSpec by = option(
            "--by",
            "MEANS",
            new Words<>(By.values(), CompareCommand::word),
            "What is changed until stiffness or weight is equal: weights of all reinforcement, then the nearest whole"
                    + " layers (the default), or the thickness of the core.");
    private final OptionSpec along = option(
            "--along",
            "AXIS",
            new Words<>(Along.values(), CompareCommand::word),
            "Bending stiffness along x (the default) or y is held equal.");
    private final PageOptions page = new PageOptions(
            this,
            new Words<>(CompareCsv.Which.values(), CompareCsv.Which::word),
            "Table of the CSV: figures (the default), costs, curve or break-even.");

    CompareCommand(Materials library) {
        super(
                NAME,
                "A part by each process, or several parts, resins or schedules, side by side: weight, thickness, stiffness,"
                        + " panels, hours and cost, and from how many parts on a choice pays.",
                "laminate compare locker-lid.yaml",
                "laminate compare locker-lid.yaml --same stiffness",
                "laminate compare kayak.yaml --process infusion,vacuum-bag --resin vinylester",
                "laminate compare plywood.yaml sandwich.yaml --same stiffness --by core",
                "laminate compare locker-lid.yaml --format csv --table curve -o curve.csv");
        ways = new CompareInput(this, library);
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    @Override
    public Integer call() {
        page.check(ways.parts());
        boolean changes = given(same, Same.class).orElse(Same.REINFORCEMENT) != Same.REINFORCEMENT;
        refuse(given(by, By.class).isPresent() && !changes, "--by goes with --same stiffness or --same weight");
        refuse(
                given(along, Along.class).isPresent() && given(same, Same.class).orElse(null) != Same.STIFFNESS,
                "--along goes with --same stiffness");
        Printer<SideBySide> printer = printer();
        SideBySide comparison = ways.compare(options());
        return print(page.file(), out -> printer.print(List.of(comparison), out));
    }

    private CompareOptions options() {
        return CompareOptions.USUAL
                .with(given(same, Same.class).orElse(Same.REINFORCEMENT).basis)
                .with(given(by, By.class).orElse(By.WEIGHTS).means)
                .with(given(along, Along.class).orElse(Along.X).stiffness);
    }

    private Printer<SideBySide> printer() {
        CompareReport reports = new CompareReport(page.system());
        return switch (page.format()) {
            case TEXT -> new TextPrinter<>(reports::of, page.width(), page.style());
            case JSON -> new CompareJson();
            case CSV ->
                new CompareCsv(page.table(CompareCsv.Which.class).orElse(CompareCsv.Which.FIGURES), page.system());
            case MARKDOWN -> new MarkdownPrinter<>(reports::of);
        };
    }
}
