package laminate.print.check;

import java.util.List;
import java.util.OptionalDouble;
import laminate.check.StrengthRatios;
import laminate.check.ZoneComparison;
import laminate.print.CsvWriter;
import laminate.theory.Equivalence.Stiffness;

/** Zones compared with one of them as CSV; all numbers are ratios. */
final class ComparisonCsv {
    private ComparisonCsv() {}

    static void print(List<CheckedPart> parts, CsvWriter csv) {
        csv.headings(List.of(
                "part",
                "reference",
                "zone",
                "thickness",
                "mass",
                "material_cost",
                "bending_stiffness_x",
                "bending_stiffness_y",
                "twisting_stiffness",
                "stretching_stiffness_x",
                "stretching_stiffness_y",
                "shear_stiffness",
                "bending_strength_x",
                "bending_strength_y",
                "tensile_strength_x",
                "tensile_strength_y",
                "thickness_factor_at_equal_bending_stiffness_x"));
        for (CheckedPart part : parts) {
            part.comparisons()
                    .forEach(comparison -> print(part.check().estimate().part().name(), comparison, csv));
        }
    }

    private static void print(String part, ComparedZone compared, CsvWriter csv) {
        ZoneComparison comparison = compared.comparison();
        csv.text(part)
                .text(comparison.reference().zone().name())
                .text(comparison.candidate().zone().name())
                .number(comparison.thickness())
                .number(comparison.mass());
        number(compared.cost(), csv);
        csv.number(comparison.bending().x())
                .number(comparison.bending().y())
                .number(comparison.bending().xy())
                .number(comparison.membrane().x())
                .number(comparison.membrane().y())
                .number(comparison.membrane().xy());
        StrengthRatios strength = comparison.strength();
        for (OptionalDouble ratio :
                List.of(strength.bendingX(), strength.bendingY(), strength.tensionX(), strength.tensionY())) {
            number(ratio, csv);
        }
        csv.number(comparison.thicknessFactorAtEqual(Stiffness.BENDING_X)).end();
    }

    private static void number(OptionalDouble ratio, CsvWriter csv) {
        if (ratio.isPresent()) {
            csv.number(ratio.getAsDouble());
        } else {
            csv.nothing();
        }
    }
}
