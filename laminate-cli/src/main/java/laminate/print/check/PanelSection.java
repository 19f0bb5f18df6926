package laminate.print.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import laminate.check.PanelCheck;
import laminate.check.PanelSpot;
import laminate.part.PanelPlan;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.theory.Vector3;
import laminate.theory.panel.Convergence;
import laminate.theory.panel.InPlane;
import laminate.theory.panel.LargeDeflection;
import laminate.theory.panel.PanelLoad;
import laminate.theory.panel.PanelPoint;
import laminate.unit.Unit;

/** A panel: deflection, reserve factors, moments, and the plies at its worst point. */
final class PanelSection {
    private final Measures measures;
    private final PlySection plies;

    PanelSection(Measures measures, PlySection plies) {
        this.measures = measures;
        this.plies = plies;
    }

    void addTo(Report.Builder report, PanelCheck check) {
        PanelPlan plan = check.plan();
        report.heading(2, "Panel " + plan.name());
        report.fact(
                "panel",
                "zone " + plan.zone() + ", " + measures.size(plan.length()) + " along x by "
                        + measures.size(plan.width()));
        report.fact(
                "edges",
                CheckWords.edges(plan.edges()) + (plan.inPlane() == InPlane.HELD ? ", held in the plane" : ""));
        report.fact("load", plan.loads().stream().map(this::load).collect(Collectors.joining("; ")));
        addDeflection(report, check);
        report.grid(new ReserveTable(measures, PlyNames.of(check.zone())).of(check.reserves(), 2));
        addMoments(report, check.spots());
        PanelPoint worst = check.worstPlace();
        plies.addTo(
                report,
                " at x " + measures.size(worst.x()) + ", y " + measures.size(worst.y()),
                check.zone(),
                check.worst(),
                false);
    }

    private String load(PanelLoad load) {
        if (load instanceof PanelLoad.Uniform uniform) {
            return "pressure " + Measures.text(uniform.pressure(), measures.pressure());
        }
        if (load instanceof PanelLoad.Head head) {
            return "head " + measures.size(head.head()) + " of liquid, " + measures.liquid(head.density()) + ", "
                    + lowest(head.upright());
        }
        if (load instanceof PanelLoad.Patch patch) {
            return Measures.text(patch.force(), measures.force()) + " over " + measures.size(patch.alongX()) + " by "
                    + measures.size(patch.alongY()) + " about x " + measures.size(patch.x()) + ", y "
                    + measures.size(patch.y());
        }
        return edgeForces((PanelLoad.EdgeForces) load);
    }

    private static String lowest(PanelLoad.Upright upright) {
        return switch (upright) {
            case WIDTH -> "deepest at y = 0";
            case LENGTH -> "deepest at x = 0";
            case NONE -> "lying flat";
        };
    }

    private String edgeForces(PanelLoad.EdgeForces forces) {
        List<String> terms = new ArrayList<>();
        add(terms, "Nx", forces.Nx());
        add(terms, "Ny", forces.Ny());
        add(terms, "Nxy", forces.Nxy());
        return "edge loads " + String.join(", ", terms);
    }

    private void add(List<String> terms, String name, double value) {
        if (value != 0) {
            terms.add(name + " " + Measures.text(value, measures.forcePerLength()));
        }
    }

    private void addDeflection(Report.Builder report, PanelCheck check) {
        double w = check.bending().deflection();
        if (w == 0) {
            report.fact("deflection", "none by small-deflection theory");
        } else {
            report.fact("deflection", deflection(check));
            report.fact(
                    "of which",
                    measures.parts(
                            check.bending().bendingDeflection(), check.bending().shearDeflection(), w));
        }
        OptionalDouble soft = check.softEdgeSurplus();
        if (soft.isPresent()) {
            report.fact("on soft edges", Measures.percent(soft.getAsDouble()) + " % more");
        }
        check.large().ifPresent(large -> report.fact("large deflection", large(check, large)));
        if (w != 0) {
            report.fact("settled", settled(check.governingResponse().convergence()));
        }
    }

    private String deflection(PanelCheck check) {
        double w = check.bending().deflection();
        double h = check.zone().laminate().thickness();
        return measures.size(Math.abs(w)) + " towards the " + side(w) + ", 1/"
                + Measures.number(check.plan().span() / Math.abs(w)) + " of the shorter side, "
                + Measures.number(Math.abs(w) / h) + " times the thickness";
    }

    /** How much the last refinement of the solution changed. */
    private static String settled(Convergence convergence) {
        return "deflection to " + Measures.percent(convergence.deflection()) + " %, moments to "
                + Measures.percent(convergence.moment()) + " %"
                + (convergence.reached() ? "" : ", which is more than the tolerance");
    }

    private static String side(double w) {
        return w > 0 ? "inside" : "mould-face side";
    }

    private String large(PanelCheck check, LargeDeflection large) {
        double w = large.deflection();
        String share =
                w == 0 ? "" : ", 1/" + Measures.number(check.plan().span() / Math.abs(w)) + " of the shorter side";
        return measures.size(Math.abs(w))
                + share
                + (check.isBeyondSmallDeflection() ? "; this one counts, for stress too" : "");
    }

    private void addMoments(Report.Builder report, Map<PanelSpot, PanelPoint> spots) {
        String moment = measures.momentPerLength().symbol();
        String force = measures.forcePerLength().symbol();
        Table.Builder table = new Table.Builder(
                Column.words("at"),
                Column.numbers("Mx", moment),
                Column.numbers("My", moment),
                Column.numbers("Mxy", moment),
                Column.numbers("Qx", force),
                Column.numbers("Qy", force));
        double moments = largest(spots, PanelSection::moments);
        double forces = largest(spots, PanelSection::shears);
        if (moments == 0 && forces == 0) {
            return;
        }
        spots.forEach((spot, point) -> {
            Vector3 m = point.resultants().moment();
            Unit perLength = measures.momentPerLength();
            table.row(
                    CheckWords.spot(spot),
                    Measures.beside(moments, m.x(), perLength),
                    Measures.beside(moments, m.y(), perLength),
                    Measures.beside(moments, m.xy(), perLength),
                    Measures.beside(forces, point.Qx(), measures.forcePerLength()),
                    Measures.beside(forces, point.Qy(), measures.forcePerLength()));
        });
        report.heading(3, "Moments and shear forces per width, at the centre and amid the edges")
                .grid(table.build());
    }

    private static DoubleStream moments(PanelPoint point) {
        Vector3 m = point.resultants().moment();
        return DoubleStream.of(m.x(), m.y(), m.xy());
    }

    private static DoubleStream shears(PanelPoint point) {
        return DoubleStream.of(point.Qx(), point.Qy());
    }

    private static double largest(Map<PanelSpot, PanelPoint> spots, Function<PanelPoint, DoubleStream> of) {
        return spots.values().stream().flatMapToDouble(of).map(Math::abs).max().orElse(0);
    }
}
