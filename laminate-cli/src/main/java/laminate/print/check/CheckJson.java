package laminate.print.check;

import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;
import laminate.check.LimitCheck;
import laminate.check.NotJudged;
import laminate.check.PartCheck;
import laminate.check.Remedy;
import laminate.check.Subject;
import laminate.check.ZoneCheck;
import laminate.check.ZoneComparison;
import laminate.estimate.LaidLayer;
import laminate.estimate.StrengthOrigin;
import laminate.print.Cautions;
import laminate.print.JsonWriter;
import laminate.print.Printer;
import laminate.theory.Equivalence.Stiffness;
import laminate.theory.failure.Criterion;

/**
 * Prints checks as one JSON object with a list of parts: SI numbers with the unit in the key, 15 significant digits, keys in
 * a fixed order. What is not known, never reached or does not apply is left out; there is never a null.
 *
 * <p>Vectors are x, y, xy or 1, 2, 12, in that order; shear strain is engineering shear strain. Plies are numbered from 1 at
 * the mould face. Reserve factors multiply the mechanical load. {@code deflection_m} of a panel is that of small-deflection
 * theory; {@code governing_deflection_m} is what limits are held against.
 */
public final class CheckJson implements Printer<CheckedPart> {

    /** A printer. */
    public CheckJson() {}

    @Override
    public void print(List<CheckedPart> parts, Appendable out) throws IOException {
        JsonWriter.write(out, json -> {
            json.object().key("parts").array();
            parts.forEach(part -> print(part, json));
            json.end().end();
        });
    }

    private static void print(CheckedPart checked, JsonWriter json) {
        PartCheck check = checked.check();
        json.object()
                .field("part", check.estimate().part().name())
                .field("criterion", check.options().criterion().jsonName())
                .key("residual_stress")
                .flag(check.options().residualStress())
                .key("limits_met")
                .flag(check.limitsMet());
        printCriteria(CriteriaUsed.all(checked), json);
        json.key("zones").array();
        check.zones().forEach(zone -> print(zone, json));
        json.end();
        printBending(check, json);
        json.key("limits").array();
        check.limits().forEach(limit -> print(limit, json));
        json.end();
        if (!checked.comparisons().isEmpty()) {
            json.key("comparisons").array();
            checked.comparisons().forEach(comparison -> print(comparison, json));
            json.end();
        }
        Cautions.print(check.cautions(), json);
        json.end();
    }

    /**
     * Writes {@code panels[]} and {@code beams[]} of a check, for results that hold a check and more.
     *
     * @param check the check
     * @param json takes them; an object is open
     */
    public static void printBending(PartCheck check, JsonWriter json) {
        json.key("panels").array();
        check.panels().forEach(panel -> BendingJson.print(panel, json));
        json.end().key("beams").array();
        check.beams().forEach(beam -> BendingJson.print(beam, json));
        json.end();
    }

    private static void printCriteria(List<Criterion> criteria, JsonWriter json) {
        json.key("criteria").array();
        for (Criterion criterion : criteria) {
            json.object()
                    .field("criterion", criterion.jsonName())
                    .field("source", criterion.source())
                    .end();
        }
        json.end();
    }

    private static void print(ZoneCheck check, JsonWriter json) {
        json.object()
                .field("name", check.zone().zone().name())
                .field("thickness_m", check.zone().laminate().thickness());
        json.key("load_cases").array();
        check.loadCases().forEach(loadCase -> LoadCaseJson.print(check.zone(), loadCase, json));
        json.end();
        PlyNames names = PlyNames.of(check.zone());
        printMakeUp(check, names, json);
        json.key("not_judged").array();
        for (NotJudged ply : check.notJudged()) {
            json.object()
                    .field("ply", PlyNames.number(ply.ply()))
                    .field("material", names.material(ply.ply()))
                    .field("reason", ply.reason())
                    .end();
        }
        json.end().end();
    }

    /** What lies where, and where its strength comes from. */
    private static void printMakeUp(ZoneCheck check, PlyNames names, JsonWriter json) {
        json.key("laminate").array();
        int ply = 0;
        for (LaidLayer layer : check.zone().layers()) {
            for (int i = 0; i < layer.plies().size(); i++) {
                StrengthOrigin origin = layer.strengths().get(i);
                json.object()
                        .field("ply", PlyNames.number(ply))
                        .field("material", names.material(ply))
                        .field("angle_deg", layer.plies().get(i).angleDegrees())
                        .field("thickness_m", layer.plies().get(i).thickness())
                        .field("strength", origin.text());
                origin.status().ifPresent(status -> json.field("strength_status", status.word()));
                if (check.assumedShear().contains(ply)) {
                    json.key("G13_G23_as_G12").flag(true);
                }
                json.end();
                ply++;
            }
        }
        json.end();
    }

    private static void print(LimitCheck limit, JsonWriter json) {
        json.object()
                .field("of", limit.where().kind().word())
                .field("name", limit.where().name());
        if (limit.where().kind() != Subject.Kind.PART) {
            json.field("zone", limit.where().zone());
        }
        json.field("limit", limit.kind().word());
        limit.reserveKind().ifPresent(kind -> json.field("against", CheckWords.key(kind)));
        String unit = switch (limit.kind()) {
            case DEFLECTION, THICKNESS -> "_m";
            case MASS -> "_kg";
            case RESERVE_FACTOR -> "";
        };
        json.field("asked" + unit, limit.asked()).field("found" + unit, limit.found());
        json.field("margin", CheckWords.margin(limit))
                .field("verdict", CheckWords.verdict(limit.verdict()))
                .key("remedies")
                .array();
        limit.remedies().forEach(remedy -> print(remedy, json));
        json.end().end();
    }

    private static void print(Remedy remedy, JsonWriter json) {
        String unit = remedy.lever() == Remedy.Lever.MASS ? "_kg" : "_m";
        json.object()
                .field("change", remedy.lever().text())
                .field("factor", remedy.factor())
                .field("from" + unit, remedy.from())
                .field("to" + unit, remedy.to())
                .end();
    }

    private static void print(ComparedZone compared, JsonWriter json) {
        ZoneComparison comparison = compared.comparison();
        json.object()
                .field("reference", comparison.reference().zone().name())
                .field("zone", comparison.candidate().zone().name())
                .field("thickness_ratio", comparison.thickness())
                .field("mass_ratio", comparison.mass())
                .field("material_cost_ratio", compared.cost());
        json.field("bending_stiffness_x_ratio", comparison.bending().x())
                .field("bending_stiffness_y_ratio", comparison.bending().y())
                .field("twisting_stiffness_ratio", comparison.bending().xy())
                .field("stretching_stiffness_x_ratio", comparison.membrane().x())
                .field("stretching_stiffness_y_ratio", comparison.membrane().y())
                .field("shear_stiffness_ratio", comparison.membrane().xy())
                .field("bending_strength_x_ratio", comparison.strength().bendingX())
                .field("bending_strength_y_ratio", comparison.strength().bendingY())
                .field("tensile_strength_x_ratio", comparison.strength().tensionX())
                .field("tensile_strength_y_ratio", comparison.strength().tensionY());
        double factor = comparison.thicknessFactorAtEqual(Stiffness.BENDING_X);
        OptionalDouble core = comparison.coreThicknessAtEqual(Stiffness.BENDING_X);
        json.key("equal_bending_stiffness_x")
                .object()
                .field("thickness_factor", factor)
                .field("thickness_m", factor * comparison.candidate().laminate().thickness())
                .field("mass_ratio", factor * comparison.mass())
                .field("core_thickness_m", core)
                .end()
                .end();
    }
}
