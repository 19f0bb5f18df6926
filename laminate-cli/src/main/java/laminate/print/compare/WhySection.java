package laminate.print.compare;

import java.util.ArrayList;
import java.util.List;
import laminate.compare.Adjustment;
import laminate.compare.Adjustment.ChangedLayer;
import laminate.compare.Alternative;
import laminate.compare.Basis;
import laminate.compare.CompareOptions;
import laminate.compare.Means;
import laminate.compare.SideBySide;
import laminate.compare.StiffnessSplit;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;

/** Why the bending stiffness differs, and what was changed to make ways equal. */
final class WhySection {
    private final Measures measures;

    WhySection(Measures measures) {
        this.measures = measures;
    }

    void addTo(Report.Builder report, SideBySide ways) {
        Table changes = changes(ways.alternatives());
        if (!changes.rows().isEmpty()) {
            report.heading(2, "What was changed to make them equal").grid(changes);
            report.paragraph(words(ways.options()));
        }
        if (!ways.splits().isEmpty()) {
            report.heading(2, "Why the bending stiffness differs").grid(splits(ways.splits()));
            report.paragraph("Each by that of " + ways.alternatives().get(0).name()
                    + ". Bending stiffness goes with the modulus and with the cube of the thickness, so resin pressed out"
                    + " can cost more stiffness in thickness than it gains in modulus.");
        }
    }

    private static String words(CompareOptions options) {
        String measure = options.basis() == Basis.SAME_WEIGHT ? "weight" : "bending stiffness";
        String changed = options.means() == Means.CORE
                ? "the thickness of all cores is multiplied."
                : "all reinforcement is multiplied, before the nearest whole layers are taken.";
        return "As given and as laid: " + measure + " by that of the first, before and after. Exact: by what "
                + changed;
    }

    private static Table splits(List<StiffnessSplit> splits) {
        Table.Builder table = new Table.Builder(
                Column.words("zone"),
                Column.words("way"),
                Column.numbers("thickness", ""),
                Column.numbers("cubed", ""),
                Column.numbers("modulus", ""),
                Column.numbers("stiffness", ""));
        for (StiffnessSplit split : splits) {
            table.row(
                    split.zone(),
                    split.alternative(),
                    Measures.number(split.thickness()),
                    Measures.number(split.thicknessCubed()),
                    Measures.number(split.modulus()),
                    Measures.number(split.stiffness()));
        }
        return table.build();
    }

    private Table changes(List<Alternative> ways) {
        Table.Builder table = new Table.Builder(
                Column.words("way"),
                Column.words("zone"),
                Column.numbers("as given", ""),
                Column.numbers("exact", ""),
                Column.numbers("as laid", ""),
                Column.words("layers now"));
        for (Alternative way : ways) {
            for (Adjustment change : way.adjustments()) {
                table.row(
                        way.name(),
                        change.zone(),
                        Measures.number(change.ratioAsGiven()),
                        Measures.number(change.factor()),
                        Measures.number(change.ratioAsLaid()),
                        layers(change));
            }
        }
        return table.build();
    }

    private String layers(Adjustment change) {
        List<String> texts = new ArrayList<>();
        for (ChangedLayer layer : change.layers()) {
            boolean counted = layer.thickness().isEmpty();
            if (change.means() == Means.REINFORCEMENT || !counted) {
                texts.add(
                        counted
                                ? Measures.count(layer.times()) + " × " + layer.material()
                                : layer.material() + " "
                                        + Measures.text(layer.thickness().getAsDouble(), measures.length()));
            }
        }
        return String.join(", ", texts);
    }
}
