package laminate.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import laminate.file.InputException;
import laminate.file.MaterialFile;
import laminate.library.MaterialLibrary;
import laminate.material.Form;
import laminate.material.Material;
import laminate.material.MaterialKind;
import laminate.material.Materials;
import laminate.material.Reinforcement;
import laminate.print.Report;
import laminate.print.ReportMarkdown;
import laminate.print.ReportText;
import laminate.print.Style;
import laminate.print.materials.MaterialsCsv;
import laminate.print.materials.MaterialsJson;
import laminate.print.materials.MaterialsReport;
import laminate.unit.Nearest;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** {@code laminate materials}: what there is to name in a part file, and where its figures come from. */
final class MaterialsCommand extends Command {
    static final String NAME = "materials";

    private static final int WIDTH = 80;
    private static final int SUGGESTIONS = 3;

    private final PositionalParamSpec ids =
            arguments("ID", "0..*", String.class, "Materials to show with every figure; without, a list.");
    private final OptionSpec kind = option(
            "--kind",
            "KIND",
            new Words<>(MaterialKind.values(), MaterialKind::word),
            "List fibre, resin, catalyst, hardener, reinforcement, core, bulker or consumable only.");
    private final OptionSpec form = option(
            "--form",
            "FORM",
            new Words<>(Form.values(), Form::word),
            "List reinforcements of a form only: mat, tissue, woven-roving, woven-cloth, stitched or unidirectional.");
    private final OptionSpec fibre =
            option("--fibre", "FIBRE", String.class, "List reinforcements that hold a fibre only, by its id.");
    private final OptionSpec words =
            repeated("--find", "WORD", String.class, "List those with the word in id or name; may be repeated.");
    private final OptionSpec files =
            repeated("--materials", "FILE", Path.class, "Material file laid over the library; may be repeated.");
    private final OptionSpec format =
            option("--format", "FORMAT", Format.words(Format.values()), "text (the default), json, csv or markdown.");
    private final OptionSpec output = output();

    MaterialsCommand() {
        super(
                NAME,
                "List materials, or show every figure of some with its source.",
                "laminate materials --kind reinforcement --form mat",
                "laminate materials --find carbon",
                "laminate materials mat-450 polyester-ortho");
    }

    @Override
    public Integer call() {
        refuse(
                !names().isEmpty()
                        && List.of(kind, form, fibre, words).stream().anyMatch(filter -> filter.getValue() != null),
                "Filters are for the list; name materials, or filter them.");
        refuseToOverwrite(given(output, Path.class), all(files, Path.class));
        Materials stock = stock();
        List<Material> wanted = names().isEmpty() ? listed(stock) : named(stock);
        return print(given(output, Path.class), out -> print(wanted, out));
    }

    private List<String> names() {
        return all(ids, String.class);
    }

    private Materials stock() {
        Materials library = new MaterialLibrary();
        List<Path> own = all(files, Path.class);
        try {
            return own.isEmpty() ? library : library.overlaidBy(Materials.of(MaterialFile.read(own, library)));
        } catch (InputException e) {
            throw new UnusableInputException(e.getMessage());
        }
    }

    private List<Material> named(Materials stock) {
        List<Material> found = new ArrayList<>();
        List<String> complaints = new ArrayList<>();
        for (String id : names()) {
            stock.find(id).ifPresentOrElse(found::add, () -> complaints.add(unknown(id, stock)));
        }
        if (!complaints.isEmpty()) {
            throw new UnusableInputException(String.join(System.lineSeparator(), complaints));
        }
        return found;
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
        return given(kind, MaterialKind.class)
                        .filter(wanted -> wanted != material.kind())
                        .isEmpty()
                && given(form, Form.class)
                        .filter(wanted -> !hasForm(material, wanted))
                        .isEmpty()
                && given(fibre, String.class)
                        .filter(wanted -> !holds(material, wanted))
                        .isEmpty()
                && all(words, String.class).stream().allMatch(word -> mentions(material, word));
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
        Style style = Colours.of(spec(), given(output, Path.class).isPresent());
        switch (given(format, Format.class).orElse(Format.TEXT)) {
            case TEXT -> new ReportText(WIDTH, style).print(report(materials), out);
            case JSON -> new MaterialsJson().print(materials, out);
            case CSV -> new MaterialsCsv().print(materials, out);
            case MARKDOWN -> new ReportMarkdown().print(report(materials), out);
        }
    }

    private Report report(List<Material> materials) {
        MaterialsReport reports = new MaterialsReport();
        return names().isEmpty() ? reports.list(materials) : reports.details(materials);
    }
}
