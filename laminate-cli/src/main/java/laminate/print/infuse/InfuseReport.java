package laminate.print.infuse;

import java.util.ArrayList;
import java.util.List;
import laminate.estimate.Caution;
import laminate.plan.infusion.Infusion;
import laminate.plan.infusion.PartInfusion;
import laminate.print.Cautions;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.unit.UnitSystem;

/** Tells infusions as a document, free of any format: whether each fills before it gels stands first. */
public final class InfuseReport {
    private final Measures measures;

    /**
     * How infusions are told.
     *
     * @param system the reader's units
     */
    public InfuseReport(UnitSystem system) {
        this.measures = new Measures(system);
    }

    /**
     * Tells the infusions of a part.
     *
     * @param part the infusions
     * @return the document
     */
    public Report of(PartInfusion part) {
        Report.Builder report =
                new Report.Builder().heading(1, part.estimate().part().name());
        for (Infusion infusion : part.infusions()) {
            report.fact(
                    infusion.zone().map(zone -> "zone " + zone).orElse("infusion"),
                    infusion.gel().verdict().word() + ": " + infusion.gel().reason() + restsOn(infusion));
        }
        InfusionSection section = new InfusionSection(measures);
        part.infusions().forEach(infusion -> section.addTo(report, infusion));
        BalanceSection balances = new BalanceSection(measures);
        part.balances().forEach(balance -> balances.addTo(report, balance));
        Cautions.addTo(report, "To mind", Caution.Kind.SCHEDULE, cautions(part));
        Cautions.addTo(report, "Safety", Caution.Kind.SAFETY, cautions(part));
        return report.build();
    }

    private static String restsOn(Infusion infusion) {
        return infusion.figures().isPermeabilityFromMemory()
                ? "; this rests on a permeability from memory, which may be a third or three times as much"
                : "";
    }

    /** Those of single infusions, then those of all; each once. */
    private static List<Caution> cautions(PartInfusion part) {
        List<Caution> cautions = new ArrayList<>();
        for (Infusion infusion : part.infusions()) {
            addNew(infusion.cautions(), cautions);
        }
        addNew(part.cautions(), cautions);
        return cautions;
    }

    private static void addNew(List<Caution> more, List<Caution> cautions) {
        for (Caution caution : more) {
            if (cautions.stream().noneMatch(known -> known.text().equals(caution.text()))) {
                cautions.add(caution);
            }
        }
    }
}
