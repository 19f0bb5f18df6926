package laminate.print.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import laminate.estimate.ZoneEstimate;
import laminate.material.Figure;
import laminate.material.Form;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.theory.Deformation;
import laminate.theory.EngineeringConstants;
import laminate.theory.Laminate;
import laminate.theory.Matrix3;
import laminate.unit.Unit;

/** The stiffness of a zone: moduli in plane and in bending, bending stiffness, expansion, and A, B, D if wanted. */
final class StiffnessSection {
    private final Measures measures;
    private final boolean matrices;

    StiffnessSection(Measures measures, boolean matrices) {
        this.measures = measures;
        this.matrices = matrices;
    }

    void addTo(Report.Builder report, ZoneEstimate zone) {
        Laminate laminate = zone.laminate();
        report.heading(3, "Stiffness" + (laminate.isCoupled() ? ", free to couple (unsymmetric)" : ""));
        Optional<ZoneStiffness> constants = ZoneStiffness.of(laminate);
        if (constants.isPresent()) {
            addConstants(report, constants.get());
            addKnockDowns(report, zone.knockDowns());
            addBeamStiffness(report, constants.get());
            addExpansion(report, constants.get().expansion());
        } else {
            report.paragraph("No moduli: the plies are too unlike for the sum to be inverted.");
            addKnockDowns(report, zone.knockDowns());
        }
        if (matrices) {
            addMatrices(report, laminate);
        }
    }

    private void addConstants(Report.Builder report, ZoneStiffness stiffness) {
        String unit = measures.modulus().symbol();
        Table.Builder table = new Table.Builder(
                Column.words(""),
                Column.numbers("Ex", unit),
                Column.numbers("Ey", unit),
                Column.numbers("Gxy", unit),
                Column.numbers("nu xy", ""));
        addRow(table, "in plane", stiffness.inPlane());
        addRow(table, "in bending", stiffness.bending());
        report.grid(table.build());
    }

    /** As a workshop file writes it: mat 81 %, woven 88 %. */
    private static void addKnockDowns(Report.Builder report, Map<Form.Architecture, Figure> knockDowns) {
        if (!knockDowns.isEmpty()) {
            List<String> shares = new ArrayList<>();
            for (Map.Entry<Form.Architecture, Figure> knockDown : knockDowns.entrySet()) {
                double percent = Unit.PERCENT.fromSi(knockDown.getValue().value());
                shares.add(word(knockDown.getKey()) + " " + Measures.count(percent) + " %");
            }
            report.fact("knock-downs", String.join(", ", shares) + " of the moduli of theory");
        }
    }

    private static String word(Form.Architecture lying) {
        return lying == Form.Architecture.RANDOM ? "mat" : "woven";
    }

    private void addRow(Table.Builder table, String name, EngineeringConstants constants) {
        Unit unit = measures.modulus();
        table.row(
                name,
                Measures.number(constants.Ex(), unit),
                Measures.number(constants.Ey(), unit),
                Measures.number(constants.Gxy(), unit),
                Measures.number(constants.nuxy()));
    }

    private void addBeamStiffness(Report.Builder report, ZoneStiffness stiffness) {
        String unit = measures.bendingStiffnessUnit();
        report.fact(
                "EI per width",
                "x " + measures.bendingStiffness(stiffness.beamX()) + " " + unit + ", y "
                        + measures.bendingStiffness(stiffness.beamY()) + " " + unit + " (E h³/12 in bending)");
    }

    private void addExpansion(Report.Builder report, Optional<Deformation> expansion) {
        if (expansion.isEmpty()) {
            return;
        }
        Deformation free = expansion.get();
        String shear = free.strain().xy() == 0
                ? ""
                : ", shear " + millionths(free.strain().xy());
        report.fact(
                "expansion",
                "x " + millionths(free.strain().x()) + ", y "
                        + millionths(free.strain().y()) + shear);
    }

    /** As a part file writes it: 5.30e-6 1/K. */
    private String millionths(double perKelvin) {
        return Measures.number(perKelvin, measures.expansion())
                + measures.expansion().symbol().replace("1e-6", "e-6 1");
    }

    private void addMatrices(Report.Builder report, Laminate laminate) {
        Unit perLength = measures.forcePerLength();
        Unit force = measures.force();
        addMatrix(report, "A", perLength.symbol(), laminate.membrane(), entry -> Measures.number(entry, perLength));
        addMatrix(report, "B", force.symbol(), laminate.coupling(), entry -> Measures.number(entry, force));
        addMatrix(report, "D", measures.bendingStiffnessUnit(), laminate.bending(), measures::bendingStiffness);
    }

    private static void addMatrix(
            Report.Builder report, String name, String unit, Matrix3 matrix, DoubleFunction<String> text) {
        Table.Builder table = new Table.Builder(
                Column.words(name + " (" + unit + ")"),
                Column.numbers("x", ""),
                Column.numbers("y", ""),
                Column.numbers("shear", ""));
        String[] names = {"x", "y", "shear"};
        for (int i = 0; i < names.length; i++) {
            table.row(
                    names[i], text.apply(matrix.get(i, 0)), text.apply(matrix.get(i, 1)), text.apply(matrix.get(i, 2)));
        }
        report.grid(table.build());
    }
}
