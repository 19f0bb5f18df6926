package laminate.file;

import java.util.ArrayList;
import java.util.List;
import laminate.material.MaterialKind;
import laminate.material.Resin;
import laminate.process.Process;

/**
 * What holds for the laying of a layer: what part, zone, stage and layer state, of which the nearest wins.
 *
 * @param depth how far inside the part this is: 0 outside of it, 1 for the part
 * @param process the process
 * @param processIsAsked whether the process was asked for from outside and wins over the file
 * @param resin the resin
 * @param resinDepth the depth at which the resin is stated
 * @param resinIsAsked whether the resin was asked for from outside, in the place of the outermost one of the file
 * @param agents catalysts and hardeners, nearest first
 */
record Terms(
        int depth,
        Term<Process> process,
        boolean processIsAsked,
        Term<Resin> resin,
        int resinDepth,
        boolean resinIsAsked,
        List<DeepAgent> agents) {

    /**
     * An agent and where it is stated.
     *
     * @param stated the agent
     * @param depth the depth at which it is stated
     */
    record DeepAgent(Doses.Stated stated, int depth) {}

    private static final List<MaterialKind> AGENTS = List.of(MaterialKind.CATALYST, MaterialKind.HARDENER);

    /** Nothing stated yet. */
    static final Terms NONE = new Terms(0, Term.nothing(), false, Term.nothing(), 0, false, List.of());

    /** These terms with a process that wins over every other. */
    Terms asking(Process asked, Node where) {
        Term<Process> term = Term.of(asked, where);
        return new Terms(depth, term, true, resin, resinDepth, resinIsAsked, agents);
    }

    /** These terms with a resin that takes the place of the outermost one that is stated, or of none. */
    Terms asking(Term<Resin> asked) {
        return new Terms(depth, process, processIsAsked, asked, 0, true, agents);
    }

    /** The terms one level further in, with what the fields there state. */
    Terms within(Fields in, Stock stock) {
        Term<Process> ownProcess = in.stated("process", Words.PROCESS);
        Term<Resin> ownResin = in.stated("resin", stock.laminatingResin());
        boolean isOutermost = resinDepth == 0;
        boolean askedHolds = resinIsAsked && (isOutermost || !ownResin.stands());
        return new Terms(
                depth + 1,
                processIsAsked ? process : ownProcess.or(process),
                processIsAsked,
                askedHolds ? resin : ownResin.or(resin),
                ownResin.stands() ? depth + 1 : resinDepth,
                askedHolds,
                withAgents(in, stock));
    }

    /** The agents of a coating or of a level, put before those from farther out. */
    private List<DeepAgent> withAgents(Fields in, Stock stock) {
        List<DeepAgent> all = new ArrayList<>();
        for (Doses.Stated stated : agentsOf(in, stock)) {
            all.add(new DeepAgent(stated, depth + 1));
        }
        all.addAll(agents);
        return all;
    }

    /** The agents that fields state under their two keys. One that could not be read counts as not stated. */
    static List<Doses.Stated> agentsOf(Fields in, Stock stock) {
        List<Doses.Stated> agents = new ArrayList<>();
        for (MaterialKind kind : AGENTS) {
            in.stated(kind.word(), Doses.of(kind, stock)).value().ifPresent(agents::add);
        }
        return agents;
    }
}
