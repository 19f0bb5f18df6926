package laminate.file;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import laminate.part.Part;
import laminate.part.Tooling;

/** Sees to it that whoever states the life and the planned pulls of one mould states the same. */
final class ToolAgreement {

    private final Map<Tooling, Fields> places = new IdentityHashMap<>();

    /** Remembers where tooling is stated. */
    Tooling noted(Tooling tooling, Fields in) {
        places.put(tooling, in);
        return tooling;
    }

    /** Complains of each mould in use that is stated differently from the first time. */
    void check(List<Job> mouldings) {
        Map<Part, Tooling> first = new HashMap<>();
        Deque<Part> parts = new ArrayDeque<>();
        mouldings.forEach(job -> parts.add(job.part()));
        while (!parts.isEmpty()) {
            Tooling tooling = parts.remove().toolingInUse();
            if (tooling.mould().isPresent()) {
                Tooling earlier = first.putIfAbsent(tooling.mould().get(), tooling);
                if (earlier == null) {
                    parts.add(tooling.mould().get());
                } else {
                    check(tooling, earlier);
                }
            }
        }
    }

    private void check(Tooling tooling, Tooling earlier) {
        if (!tooling.life().equals(earlier.life())) {
            complain("life", "has another life", tooling, earlier);
        }
        if (!tooling.plannedPulls().equals(earlier.plannedPulls())) {
            complain("planned-pulls", "is planned for another number of pulls", tooling, earlier);
        }
    }

    private void complain(String key, String what, Tooling tooling, Tooling earlier) {
        Position there = places.get(earlier).node().position();
        places.get(tooling)
                .complain(
                        key,
                        Complaints.shown(earlier.mouldName()) + " " + what + " in " + there.file() + ":" + there.line()
                                + "; what shares a mould states the same of it, or has made-on: in the project file");
    }
}
