package laminate.print.check;

import java.util.ArrayList;
import java.util.List;
import laminate.check.Reserve;
import laminate.part.ReserveKind;
import laminate.print.Measures;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.theory.failure.PlyReserve;
import laminate.theory.sandwich.LocalCheck;
import laminate.theory.sandwich.LocalMode;
import laminate.unit.Unit;

/** Reserve factors by kind, least first, with the place. */
final class ReserveTable {
    private final Measures measures;
    private final PlyNames names;

    ReserveTable(Measures measures, PlyNames names) {
        this.measures = measures;
        this.names = names;
    }

    /** A table with as many columns of places as there are coordinates: 0 of a load case, 1 of a beam, 2 of a panel. */
    Table of(List<Reserve> reserves, int coordinates) {
        List<Column> columns = new ArrayList<>(List.of(Column.words("against"), Column.numbers("reserve factor", "")));
        String length = measures.length().symbol();
        List.of("x", "y").subList(0, coordinates).forEach(name -> columns.add(Column.numbers(name, length)));
        columns.add(Column.words("where and how"));
        Table.Builder table = new Table.Builder(columns);
        for (Reserve reserve : reserves) {
            List<String> row = new ArrayList<>(List.of(reserve.kind().word(), Measures.reserve(reserve.factor())));
            List.of(reserve.x(), reserve.y())
                    .subList(0, coordinates)
                    .forEach(place -> row.add(Measures.number(place, measures.length())));
            row.add(how(reserve));
            table.row(row);
        }
        return table.build();
    }

    private String how(Reserve reserve) {
        return reserve.ply()
                .map(this::how)
                .or(() -> reserve.local().map(this::how))
                .orElse(whole(reserve.kind()));
    }

    /** What fails where it is no single ply. */
    private static String whole(ReserveKind kind) {
        return switch (kind) {
            case BUCKLING -> "the whole panel";
            case CORE_SHEAR -> "core around the patch, mean over its edge";
            case LAST_PLY -> "the most it carries, ply by ply";
            default -> "";
        };
    }

    String how(PlyReserve failure) {
        return names.of(failure.ply()) + ", " + CheckWords.at(failure.at()) + ": "
                + failure.reserve().mode().text();
    }

    private String how(LocalCheck local) {
        Unit unit = isForce(local.mode()) ? measures.forcePerLength() : measures.stress();
        String values = Measures.number(local.demand(), unit) + " of " + Measures.text(local.capacity(), unit);
        String what = local.mode() == LocalMode.BEARING
                ? "core under the load: "
                : local.mode() == LocalMode.FLEXURAL_CRUSHING ? "core between the bent faces: " : "";
        return what + local.face().map(face -> CheckWords.face(face) + ": ").orElse("") + values;
    }

    private static boolean isForce(LocalMode mode) {
        return mode == LocalMode.SHEAR_CRIMPING || mode == LocalMode.INDENTATION;
    }
}
