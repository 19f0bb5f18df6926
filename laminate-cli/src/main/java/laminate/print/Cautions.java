package laminate.print;

import java.util.ArrayList;
import java.util.List;
import laminate.estimate.Caution;

/** Tells what to mind, alike in the results of every command. */
public final class Cautions {
    private Cautions() {}

    /**
     * Adds the cautions of a kind under a heading of their own; nothing where there are none.
     *
     * @param report takes them
     * @param heading the heading
     * @param kind the kind wanted
     * @param cautions cautions of any kind
     */
    public static void addTo(Report.Builder report, String heading, Caution.Kind kind, List<Caution> cautions) {
        List<String> texts = new ArrayList<>();
        for (Caution caution : cautions) {
            if (caution.kind() == kind) {
                texts.add(caution.text());
            }
        }
        if (!texts.isEmpty()) {
            report.heading(2, heading).bullets(texts);
        }
    }

    /**
     * Writes {@code cautions[]}, the texts, and {@code caution_details[]}, the same with kind, source and status.
     *
     * @param cautions the cautions
     * @param json takes them; an object is open
     */
    public static void print(List<Caution> cautions, JsonWriter json) {
        json.key("cautions").array();
        for (Caution caution : cautions) {
            json.text(caution.text());
        }
        json.end().key("caution_details").array();
        for (Caution caution : cautions) {
            json.object()
                    .field("kind", caution.kind() == Caution.Kind.SCHEDULE ? "schedule" : "safety")
                    .field("text", caution.text())
                    .field("source", caution.source())
                    .field("status", caution.status().word())
                    .end();
        }
        json.end();
    }
}
