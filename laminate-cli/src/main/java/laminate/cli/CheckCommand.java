package laminate.cli;

import java.util.List;
import java.util.Locale;
import laminate.check.CheckOptions;
import laminate.check.LimitCheck;
import laminate.check.PartCheck;
import laminate.estimate.Estimator;
import laminate.file.Job;
import laminate.material.Materials;
import laminate.print.MarkdownPrinter;
import laminate.print.Printer;
import laminate.print.TextPrinter;
import laminate.print.check.CheckCsv;
import laminate.print.check.CheckJson;
import laminate.print.check.CheckReport;
import laminate.print.check.CheckedPart;
import laminate.theory.failure.Criterion;
import laminate.theory.failure.PlyDiscount;
import picocli.CommandLine.Model.OptionSpec;

/** {@code laminate check}: whether parts are stiff and strong enough for what their files say they carry. */
final class CheckCommand extends Command {
    static final String NAME = "check";

    private static final int RAYS = 360;
    private static final int MOST_RAYS = 1_000_000;

    /** The criteria for plies with directions, by the word of results with a hyphen for an underscore. */
    private static final Words<Criterion> CRITERIA = new Words<>(
            new Criterion[] {
                Criterion.MAX_STRESS, Criterion.MAX_STRAIN, Criterion.TSAI_HILL, Criterion.TSAI_WU, Criterion.HASHIN
            },
            criterion -> criterion.jsonName().replace('_', '-'));

    private static final String EXAMPLE = """
            Add what the part has to carry, for example:

              zones:
                - name: lid
                  load-cases: [{name: pull, Nx: 8 N/mm}]
              panels:
                - {name: lid, zone: lid, length: 600 mm, width: 400 mm,
                   edges: simply supported, pressure: 4 kPa}
              limits: {deflection: 1/100 span, reserve-factor: {first-ply: 2}}""";

    /** What a failed ply loses. */
    private enum Discount {
        BY_MODE(PlyDiscount.BY_MODE),
        WHOLE_PLY(PlyDiscount.WHOLE_PLY);

        private final PlyDiscount discount;

        Discount(PlyDiscount discount) {
            this.discount = discount;
        }

        String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    private final PartInput parts;
    private final OptionSpec criterion = option(
            "--criterion",
            "CRITERION",
            CRITERIA,
            "What decides for plies with directions: max-stress, max-strain, tsai-hill, tsai-wu (the default) or hashin;"
                    + " mats and cores have their own.");
    private final OptionSpec discount = option(
            "--discount",
            "DISCOUNT",
            new Words<>(Discount.values(), Discount::word),
            "What a failed ply loses on the way to the last: by-mode (the default) or whole-ply.");
    private final OptionSpec noResidual = flag(
            "--no-residual-stress",
            "Leave out the temperature-change and moisture of load cases, and so the stress left by cure.");
    private final OptionSpec large =
            flag("--large-deflection", "Reckon the large deflection of every panel, not only where it matters.");
    private final OptionSpec plies =
            flag("--plies", "Print every ply at all three points, with the reserve factors by every criterion.");
    private final OptionSpec reference =
            option("--reference", "ZONE", String.class, "Compare every other zone with this one: what may replace it?");
    private final OptionSpec surface = option(
            "--surface",
            "TERM,TERM",
            SurfaceAxes.reader(),
            "First-ply failure surface of every load case over two of Nx, Ny, Nxy, Mx, My, Mxy, strain-x, strain-y,"
                    + " strain-xy, curvature-x, curvature-y, curvature-xy; its other loads stay. For json, and csv with"
                    + " --table surface.");
    private final OptionSpec rays =
            option("--rays", "NUMBER", new WholeNumber(), "Points of the failure surface, " + RAYS + " if not given.");
    private final PageOptions page = new PageOptions(
            this,
            new Words<>(CheckCsv.Which.values(), CheckCsv.Which::word),
            "Table of the CSV: plies (the default), panels, beams, limits, comparison or surface.");

    CheckCommand(Materials library) {
        super(
                NAME,
                "Deflection, ply stresses, reserve factors, first and last failure of what parts carry, and what would"
                        + " mend a limit that is not met.",
                "laminate check locker-lid.yaml",
                "laminate check locker-lid.yaml --criterion hashin --plies --width 120",
                "laminate check locker-lid.yaml --reference \"edge band\"",
                "laminate check locker-lid.yaml --format csv --table surface --surface Nx,Ny");
        parts = new PartInput(this, library);
        spec().usageMessage()
                .exitCodeListHeading("%nExit codes:%n")
                .exitCodeList(ExitCode.meanings(
                        "every limit that the part files set is met",
                        "a file cannot be used, or has nothing to check",
                        "a limit is not met; the results are written all the same"));
    }

    @Override
    public Integer call() {
        checkUsage();
        Printer<CheckedPart> printer = printer();
        List<CheckedPart> checks = parts.telling(parts.overrides(), true, this::check, CheckedPart::isEmpty);
        refuseNothingToCheck(checks);
        print(page.file(), out -> printer.print(checks, out));
        return verdict(checks);
    }

    private void checkUsage() {
        page.check(parts);
        boolean drawn = given(surface, SurfaceAxes.class).isPresent();
        boolean tabled = page.table(CheckCsv.Which.class)
                .filter(CheckCsv.Which.SURFACE::equals)
                .isPresent();
        boolean compared = page.table(CheckCsv.Which.class)
                .filter(CheckCsv.Which.COMPARISON::equals)
                .isPresent();
        int wanted = given(rays, Integer.class).orElse(RAYS);
        refuse(
                isSet(plies) && !page.isForReading(),
                "--plies goes with --format text or markdown; others have them all");
        refuse(given(rays, Object.class).isPresent() && !drawn, "--rays goes with --surface");
        refuse(wanted < 3 || wanted > MOST_RAYS, "--rays must be 3 to " + MOST_RAYS + ", not " + wanted);
        refuse(tabled && !drawn, "--table surface wants --surface, as --surface Nx,Ny");
        refuse(
                drawn && !tabled && page.format() != Format.JSON,
                "--surface goes with --format json, or with --format csv --table surface");
        refuse(compared && given(reference, Object.class).isEmpty(), "--table comparison wants --reference ZONE");
    }

    private CheckedPart check(Job job) {
        PartCheck check = PartCheck.of(job.estimate(), options());
        Estimator estimator = new Estimator(job.workshop(), job.prices());
        return given(reference, String.class)
                .map(zone -> CheckedPart.comparedWith(zone, check, estimator))
                .orElseGet(() -> CheckedPart.of(check));
    }

    private CheckOptions options() {
        CheckOptions options =
                CheckOptions.USUAL.with(given(criterion, Criterion.class).orElse(CheckOptions.USUAL.criterion()));
        options = given(discount, Discount.class)
                .map(chosen -> chosen.discount)
                .map(options::with)
                .orElse(options);
        options = isSet(noResidual) ? options.withoutResidualStress() : options;
        options = isSet(large) ? options.withLargeDeflection() : options;
        return given(surface, SurfaceAxes.class)
                .map(axes -> axes.with(given(rays, Integer.class).orElse(RAYS)))
                .map(options::with)
                .orElse(options);
    }

    private static void refuseNothingToCheck(List<CheckedPart> checks) {
        List<String> idle = checks.stream()
                .filter(CheckedPart::isEmpty)
                .map(checked -> checked.check().estimate().part().name() + ": there is nothing to check.")
                .toList();
        if (!idle.isEmpty()) {
            throw new UnusableInputException(String.join("\n", idle) + " " + EXAMPLE);
        }
    }

    /** A miss is told to whoever does not read the results as well, but only after they are written. */
    private int verdict(List<CheckedPart> checks) {
        int exitCode = ExitCode.DONE;
        for (CheckedPart checked : checks) {
            List<LimitCheck> limits = checked.check().limits();
            long open = limits.stream().filter(limit -> !limit.isMet()).count();
            if (open > 0) {
                String name = checked.check().estimate().part().name();
                spec().commandLine().getErr().println(name + ": " + open + " of " + limits.size() + " limits not met");
                exitCode = ExitCode.REQUIREMENT_NOT_MET;
            }
        }
        return exitCode;
    }

    private Printer<CheckedPart> printer() {
        CheckReport reports = new CheckReport(page.system(), isSet(plies));
        return switch (page.format()) {
            case TEXT -> new TextPrinter<>(reports::of, page.width(), page.style());
            case JSON -> new CheckJson();
            case CSV -> csv();
            case MARKDOWN -> new MarkdownPrinter<>(reports::of);
        };
    }

    private Printer<CheckedPart> csv() {
        CheckCsv.Which table = page.table(CheckCsv.Which.class).orElse(CheckCsv.Which.PLIES);
        return new CheckCsv(table, page.system());
    }
}
