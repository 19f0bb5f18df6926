package laminate.print.check;

import java.util.Locale;
import java.util.OptionalDouble;
import laminate.check.LimitCheck;
import laminate.check.PanelSpot;
import laminate.check.Subject;
import laminate.part.ReserveKind;
import laminate.theory.PlyPoint;
import laminate.theory.failure.Criterion;
import laminate.theory.panel.Edge;
import laminate.theory.panel.Edges;
import laminate.theory.sandwich.Face;

/** Words that the printers of checks share. */
public final class CheckWords {
    private CheckWords() {}

    /** Where in a ply, in a word for a table. */
    static String side(PlyPoint.At at) {
        return switch (at) {
            case MOULD_FACE_SIDE -> "mould";
            case MIDDLE -> "middle";
            case INNER_SIDE -> "inner";
        };
    }

    static String at(PlyPoint.At at) {
        return switch (at) {
            case MOULD_FACE_SIDE -> "mould-face side";
            case MIDDLE -> "middle";
            case INNER_SIDE -> "inner side";
        };
    }

    static String criterion(Criterion criterion) {
        return switch (criterion) {
            case MAX_STRESS -> "max stress";
            case MAX_STRAIN -> "max strain";
            case TSAI_HILL -> "Tsai-Hill";
            case TSAI_WU -> "Tsai-Wu";
            case HASHIN -> "Hashin";
            case ISOTROPIC -> "isotropic";
            case CORE_SHEAR -> "core shear";
            case CRUSHING -> "crushing";
        };
    }

    static String face(Face face) {
        return face == Face.MOULD_FACE ? "mould face" : "inner face";
    }

    static String spot(PanelSpot spot) {
        return switch (spot) {
            case CENTRE -> "centre";
            case X_START -> "x = 0";
            case X_END -> "x = length";
            case Y_START -> "y = 0";
            case Y_END -> "y = width";
        };
    }

    static String edge(Edge edge) {
        return edge.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static String edges(Edges edges) {
        if (edges.equals(new Edges(edges.xStart(), edges.xStart(), edges.xStart(), edges.xStart()))) {
            return edge(edges.xStart());
        }
        return edge(edges.xStart()) + ", " + edge(edges.xEnd()) + ", " + edge(edges.yStart()) + ", "
                + edge(edges.yEnd()) + " (x = 0, x = length, y = 0, y = width)";
    }

    /**
     * What a check or figure is of.
     *
     * @param subject the subject
     * @return for example "panel lid"
     */
    public static String subject(Subject subject) {
        return switch (subject.kind()) {
            case PART -> "the part";
            case ZONE -> "zone " + subject.name();
            case LOAD_CASE -> "zone " + subject.zone() + ", " + subject.name();
            case PANEL, BEAM -> subject.kind().word() + " " + subject.name();
        };
    }

    /**
     * What is limited.
     *
     * @param limit the limit
     * @return for example "deflection"
     */
    public static String limit(LimitCheck limit) {
        return limit.reserveKind()
                .map(kind -> kind.word() + " reserve")
                .orElse(limit.kind().word());
    }

    /** How well a limit is kept; empty where nothing was found, or nothing at all of what may not be exceeded. */
    static OptionalDouble margin(LimitCheck limit) {
        double margin = limit.margin();
        return margin < Double.MAX_VALUE ? OptionalDouble.of(margin) : OptionalDouble.empty();
    }

    static String verdict(LimitCheck.Verdict verdict) {
        return verdict.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The kind of a reserve factor as a key of JSON or CSV. */
    static String key(ReserveKind kind) {
        return kind.word().replace('-', '_');
    }
}
