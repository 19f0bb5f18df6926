package laminate.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import laminate.check.LimitCheck.Kind;
import laminate.check.LimitCheck.Verdict;
import laminate.check.Remedy.Lever;
import laminate.part.Limits;
import laminate.part.ReserveKind;

/** Holds one subject against the limits that hold for it. */
final class LimitChecks {
    private final Subject where;
    private final Limits holding;
    private final Limits own;

    /**
     * Limits of a subject.
     *
     * @param holding its own limits and those handed down to it
     * @param own its own limits alone
     */
    LimitChecks(Subject where, Limits holding, Limits own) {
        this.where = where;
        this.holding = holding;
        this.own = own;
    }

    /** Deflection and reserve factors of a load case, panel or beam, worst first. */
    List<LimitCheck> ofSolved(MakeUp makeUp, OpenQuestions open, Function<MakeUp, Solved> solver, Solved asLaid) {
        List<LimitCheck> found = new ArrayList<>();
        deflectionLimit(asLaid).ifPresent(asked -> found.add(deflection(asked, makeUp, solver, asLaid)));
        for (Map.Entry<ReserveKind, Double> limit : holding.reserveFactors().entrySet()) {
            reserve(limit.getKey(), limit.getValue(), makeUp, open, solver, asLaid)
                    .ifPresent(found::add);
        }
        return found;
    }

    private Optional<Double> deflectionLimit(Solved asLaid) {
        return asLaid.deflection().isEmpty()
                ? Optional.empty()
                : holding.deflection().map(limit -> limit.over(asLaid.span()));
    }

    private LimitCheck deflection(double asked, MakeUp makeUp, Function<MakeUp, Solved> solver, Solved asLaid) {
        double found = asLaid.deflection().orElseThrow();
        double margin = LimitCheck.margin(Kind.DEFLECTION, asked, found);
        boolean kept = LimitCheck.isKept(Kind.DEFLECTION, asked, found);
        boolean open = Math.abs(margin - 1) < asLaid.doubtOfDeflection();
        List<Remedy> remedies = kept
                ? List.of()
                : Remedies.of(
                        makeUp,
                        Remedies.ofDeflection(makeUp),
                        margin,
                        changed -> deflectionMargin(asked, asLaid.near(changed)),
                        changed -> deflectionMargin(asked, solver.apply(changed)));
        return new LimitCheck(
                where,
                Kind.DEFLECTION,
                Optional.empty(),
                asked,
                OptionalDouble.of(found),
                verdict(kept, open),
                remedies);
    }

    private static double deflectionMargin(double asked, Solved solved) {
        return LimitCheck.margin(Kind.DEFLECTION, asked, solved.deflection().orElseThrow());
    }

    /** A limit that was handed down is not spoken of where it is beside the point, as of a core where there is none. */
    private Optional<LimitCheck> reserve(
            ReserveKind kind,
            double asked,
            MakeUp makeUp,
            OpenQuestions questions,
            Function<MakeUp, Solved> solver,
            Solved asLaid) {
        boolean reckoned = asLaid.kinds().contains(kind);
        OptionalDouble found = reckoned ? factor(asLaid, kind) : OptionalDouble.empty();
        double margin = margin(asked, found);
        boolean open = !reckoned || questions.leaveOpen(kind) || Math.abs(margin - 1) < asLaid.doubtOfStress();
        boolean spokenOf = own.reserveFactor(kind).isPresent() || found.isPresent() || open && reckoned;
        if (!spokenOf) {
            return Optional.empty();
        }
        boolean kept = found.isEmpty() || LimitCheck.isKept(Kind.RESERVE_FACTOR, asked, found.getAsDouble());
        List<Remedy> remedies = kept
                ? List.of()
                : Remedies.of(
                        makeUp,
                        Remedies.ofReserve(kind, makeUp),
                        margin,
                        changed -> margin(asked, factor(asLaid.near(changed), kind)),
                        changed -> margin(asked, factor(solver.apply(changed), kind)));
        return Optional.of(new LimitCheck(
                where, Kind.RESERVE_FACTOR, Optional.of(kind), asked, found, verdict(kept, open), remedies));
    }

    private static OptionalDouble factor(Solved solved, ReserveKind kind) {
        return solved.reserve(kind).stream().mapToDouble(Reserve::factor).findFirst();
    }

    private static double margin(double asked, OptionalDouble found) {
        return found.isEmpty() ? Double.MAX_VALUE : LimitCheck.margin(Kind.RESERVE_FACTOR, asked, found.getAsDouble());
    }

    private static Verdict verdict(boolean kept, boolean open) {
        if (!kept) {
            return Verdict.NOT_MET;
        }
        return open ? Verdict.NOT_JUDGED : Verdict.MET;
    }

    /** The least thickness, if it is asked of this subject itself or, with {@code handedDown}, by what lies around. */
    Optional<LimitCheck> thickness(double thickness, boolean handedDown) {
        OptionalDouble asked = handedDown ? holding.thickness() : own.thickness();
        return asked.stream()
                .mapToObj(
                        limit -> simple(Kind.THICKNESS, limit, thickness, Lever.LAMINATE_THICKNESS, limit / thickness))
                .findFirst();
    }

    /** The greatest mass, which is always asked of the subject itself. */
    Optional<LimitCheck> mass(double mass) {
        return own.mass().stream()
                .mapToObj(limit -> simple(Kind.MASS, limit, mass, Lever.MASS, limit / mass))
                .findFirst();
    }

    private LimitCheck simple(Kind kind, double asked, double found, Lever lever, double factor) {
        boolean kept = LimitCheck.isKept(kind, asked, found);
        return new LimitCheck(
                where,
                kind,
                Optional.empty(),
                asked,
                OptionalDouble.of(found),
                verdict(kept, false),
                kept ? List.of() : List.of(Remedy.of(lever, factor, found)));
    }
}
