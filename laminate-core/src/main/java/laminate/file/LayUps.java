package laminate.file;

import java.util.List;
import java.util.Optional;
import laminate.material.Resin;
import laminate.process.Dose;
import laminate.process.LayUp;
import laminate.process.Process;

/** Makes lay-ups of terms. That a process or a resin is missing is told once a part, at the first layer that needs it. */
final class LayUps {

    private final Stock stock;
    private boolean toldOfProcess;
    private boolean toldOfResin;

    LayUps(Stock stock) {
        this.stock = stock;
    }

    /** The lay-up of a layer, or empty if there has been a complaint. */
    Optional<LayUp> of(Terms terms, Node layer, Complaints complaints) {
        Term<Process> process = terms.process();
        Term<Resin> resin = terms.resin();
        if (!process.stands() && !toldOfProcess) {
            toldOfProcess = true;
            complaints.at(layer, missing("process", "hand lay-up, vacuum bag or infusion"));
        }
        if (!resin.stands() && !toldOfResin) {
            toldOfResin = true;
            complaints.at(layer, missing("resin", "the id of a laminating or infusion resin"));
        }
        if (process.value().isEmpty() || resin.value().isEmpty()) {
            return Optional.empty();
        }
        try {
            Resin what = resin.value().get();
            return Optional.of(new LayUp(process.value().get(), what, dose(what, terms, layer)));
        } catch (IllegalArgumentException e) {
            complaints.at(layer, e);
            return Optional.empty();
        }
    }

    private static String missing(String key, String accepted) {
        return "no " + key + " is stated for this layer; add " + key + ": to the part, zone, stage or layer, with "
                + accepted;
    }

    /**
     * The nearest agent that cures the resin. One that does not is wrong if it is stated as near as the resin or nearer;
     * one from farther out is meant for the resin out there, and a nearer resin then takes its own usual dose.
     */
    private Dose dose(Resin resin, Terms terms, Node layer) {
        List<Terms.DeepAgent> agents = terms.agents();
        Optional<Terms.DeepAgent> fit = nearest(agents, resin, true, 0);
        if (terms.resinIsAsked()) {
            return ofAsked(resin, fit, layer);
        }
        int fitDepth = fit.isPresent() ? fit.get().depth() : 0;
        Optional<Terms.DeepAgent> misfit = nearest(agents, resin, false, Math.max(fitDepth, terms.resinDepth() - 1));
        Optional<Terms.DeepAgent> chosen = misfit.isPresent() ? misfit : fit;
        return chosen.isPresent() ? chosen.get().stated().doseFor(resin) : Doses.usual(resin, stock, layer);
    }

    /** The agents of the file are meant for its own resin: another takes them where they suit it, else its usual dose. */
    private Dose ofAsked(Resin resin, Optional<Terms.DeepAgent> fit, Node layer) {
        if (fit.isPresent()) {
            try {
                return fit.get().stated().doseFor(resin);
            } catch (IllegalArgumentException e) {
                // The amount is outside of the range of this resin.
                return Doses.usual(resin, stock, layer);
            }
        }
        return Doses.usual(resin, stock, layer);
    }

    /** The nearest agent that cures a resin, or that does not, of those stated farther in than a depth. */
    private static Optional<Terms.DeepAgent> nearest(
            List<Terms.DeepAgent> nearestFirst, Resin resin, boolean cures, int depth) {
        for (Terms.DeepAgent agent : nearestFirst) {
            if (agent.depth() > depth && agent.stated().cures(resin) == cures) {
                return Optional.of(agent);
            }
        }
        return Optional.empty();
    }

    /** The dose of a coating: of an agent stated with it, or its own usual one; never the part's. */
    Dose ofCoating(Resin coating, List<Doses.Stated> agents, Node where) {
        for (Doses.Stated stated : agents) {
            if (stated.cures(coating)) {
                return stated.doseFor(coating);
            }
        }
        return agents.isEmpty()
                ? Doses.usual(coating, stock, where)
                : agents.get(0).doseFor(coating);
    }
}
