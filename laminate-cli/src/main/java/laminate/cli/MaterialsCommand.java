package laminate.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import laminate.file.InputException;
import laminate.file.MaterialFile;
import laminate.library.MaterialLibrary;
import laminate.material.Form;
import laminate.material.Material;
import laminate.material.MaterialKind;
import laminate.material.Materials;
import laminate.material.Reinforcement;
import laminate.print.MaterialsCsv;
import laminate.print.MaterialsJson;
import laminate.print.MaterialsReport;
import laminate.print.Report;
import laminate.print.ReportMarkdown;
import laminate.print.ReportText;
import laminate.print.Style;
import laminate.unit.Nearest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code laminate materials}: what there is to name in a part file, and where its figures come from. */
@Command(
        name = MaterialsCommand.NAME,
        description = "List materials, or show every figure of some with its source.",
        footer = {
            "",
            "Examples:",
            "  laminate materials --kind reinforcement --form mat",
            "  laminate materials --find carbon",
            "  laminate materials mat-450 polyester-ortho"
        })
final class MaterialsCommand implements Callable<Integer> {
    static final String NAME = "materials";

    private static final int WIDTH = 80;
    private static final int SUGGESTIONS = 3;

    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "ID",
            arity = "0..*",
            description = "Materials to show with every figure; without, a list.")
    private List<String> ids = List.of();

    @Option(
            names = "--kind",
            paramLabel = "KIND",
            converter = Words.OfKind.class,
            description = "List fibre, resin, catalyst, hardener, reinforcement, core, bulker or consumable only.")
    private Optional<MaterialKind> kind = Optional.empty();

    @Option(
            names = "--form",
            paramLabel = "FORM",
            converter = Words.OfForm.class,
            description = "List reinforcements of a form only: mat, tissue, woven-roving, woven-cloth, stitched or"
                    + " unidirectional.")
    private Optional<Form> form = Optional.empty();

    @Option(
            names = "--fibre",
            paramLabel = "FIBRE",
            description = "List reinforcements that hold a fibre only, by its id.")
    private Optional<String> fibre = Optional.empty();

    @Option(
            names = "--find",
            paramLabel = "WORD",
            description = "List those with the word in id or name; may be repeated.")
    private List<String> words = List.of();

    @Option(
            names = "--materials",
            paramLabel = "FILE",
            description = "Material file laid over the library; may be repeated.")
    private List<Path> files = List.of();

    @Option(names = "--format", paramLabel = "FORMAT", description = "text (the default), json, csv or markdown.")
    private Format format = Format.TEXT;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "Write to a file, whole or not at all.")
    private Path output;

    /** Made by the command line. */
    MaterialsCommand() {}

    @Override
    public Integer call() {
        Materials stock = stock();
        List<Material> wanted = ids.isEmpty() ? listed(stock) : named(stock);
        Output.write(Optional.ofNullable(output), spec.commandLine().getOut(), out -> print(wanted, out));
        return ExitCode.DONE;
    }

    private Materials stock() {
        Materials stock = new MaterialLibrary();
        List<String> complaints = new ArrayList<>();
        for (Path file : files) {
            try {
                stock = stock.overlaidBy(Materials.of(MaterialFile.read(file, stock)));
            } catch (InputException e) {
                complaints.add(e.getMessage());
            }
        }
        refuse(complaints);
        return stock;
    }

    private List<Material> named(Materials stock) {
        List<Material> found = new ArrayList<>();
        List<String> complaints = new ArrayList<>();
        for (String id : ids) {
            stock.find(id).ifPresentOrElse(found::add, () -> complaints.add(unknown(id, stock)));
        }
        refuse(complaints);
        return found;
    }

    private static void refuse(List<String> complaints) {
        if (!complaints.isEmpty()) {
            throw new UnusableInputException(String.join(System.lineSeparator(), complaints));
        }
    }

    private static String unknown(String id, Materials stock) {
        List<String> left = new ArrayList<>(stock.ids());
        List<String> near = new ArrayList<>();
        Optional<String> next = Nearest.of(id, left);
        while (next.isPresent() && near.size() < SUGGESTIONS) {
            near.add(next.get());
            left.remove(next.get());
            next = Nearest.of(id, left);
        }
        String hint =
                near.isEmpty() ? "'laminate materials' lists what there is" : "near it are " + String.join(", ", near);
        return "laminate: '" + id + "' is not a known material; " + hint;
    }

    /** The materials that pass all filters, kind by kind, by id within. */
    private List<Material> listed(Materials stock) {
        return stock.ids().stream()
                .map(id -> stock.find(id).orElseThrow())
                .filter(this::isWanted)
                .sorted(Comparator.comparing(Material::kind).thenComparing(Material::id))
                .toList();
    }

    private boolean isWanted(Material material) {
        return kind.filter(wanted -> wanted != material.kind()).isEmpty()
                && form.filter(wanted -> !hasForm(material, wanted)).isEmpty()
                && fibre.filter(wanted -> !holds(material, wanted)).isEmpty()
                && words.stream().allMatch(word -> mentions(material, word));
    }

    private static boolean hasForm(Material material, Form form) {
        return material instanceof Reinforcement reinforcement && reinforcement.form() == form;
    }

    private static boolean holds(Material material, String fibre) {
        return material instanceof Reinforcement reinforcement
                && reinforcement.plies().stream()
                        .anyMatch(ply -> ply.fibre().id().equals(fibre));
    }

    private static boolean mentions(Material material, String word) {
        return (material.id() + " " + material.name()).toLowerCase(Locale.ROOT).contains(word.toLowerCase(Locale.ROOT));
    }

    private void print(List<Material> materials, Appendable out) throws IOException {
        Style style = Colours.of(spec, output != null);
        switch (format) {
            case TEXT -> new ReportText(WIDTH, style).print(report(materials), out);
            case JSON -> new MaterialsJson().print(materials, out);
            case CSV -> new MaterialsCsv().print(materials, out);
            case MARKDOWN -> new ReportMarkdown().print(report(materials), out);
        }
    }

    private Report report(List<Material> materials) {
        MaterialsReport reports = new MaterialsReport();
        return ids.isEmpty() ? reports.list(materials) : reports.details(materials);
    }
}
