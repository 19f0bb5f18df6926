package laminate.print.check;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import laminate.check.LimitCheck;
import laminate.check.PartCheck;
import laminate.print.CsvWriter;
import laminate.print.Measures;
import laminate.unit.Unit;

/** Limits as CSV, those of each part worst first. */
final class LimitCsv {
    private final Measures measures;
    private final CsvWriter csv;

    LimitCsv(Measures measures, CsvWriter csv) {
        this.measures = measures;
        this.csv = csv;
    }

    void print(List<PartCheck> checks) {
        csv.headings(List.of(
                "part",
                "of",
                "name",
                "zone",
                "limit",
                "against",
                "asked",
                "found",
                "unit",
                "margin",
                "verdict",
                "remedies"));
        checks.forEach(check ->
                check.limits().forEach(limit -> print(check.estimate().part().name(), limit)));
    }

    private void print(String part, LimitCheck limit) {
        csv.text(part)
                .text(limit.where().kind().word())
                .text(limit.where().name())
                .text(limit.where().zone())
                .text(limit.kind().word())
                .text(limit.reserveKind().map(CheckWords::key).orElse(""));
        switch (limit.kind()) {
            case DEFLECTION, THICKNESS -> values(limit, measures.length());
            case MASS -> values(limit, measures.mass());
            case RESERVE_FACTOR -> {
                csv.number(limit.asked());
                number(limit.found());
                csv.nothing();
            }
        }
        number(CheckWords.margin(limit));
        csv.text(CheckWords.verdict(limit.verdict())).text(remedies(limit)).end();
    }

    private void values(LimitCheck limit, Unit unit) {
        csv.number(unit.fromSi(limit.asked()));
        number(limit.found().stream().map(unit::fromSi).findFirst());
        csv.text(unit.symbol());
    }

    private void number(OptionalDouble value) {
        if (value.isPresent()) {
            csv.number(value.getAsDouble());
        } else {
            csv.nothing();
        }
    }

    private static String remedies(LimitCheck limit) {
        return limit.remedies().stream()
                .map(remedy -> remedy.lever().text() + " x " + Measures.number(remedy.factor()))
                .collect(Collectors.joining("; "));
    }
}
