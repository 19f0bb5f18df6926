package laminate.print;

import java.util.List;
import laminate.theory.Worked;
import laminate.theory.Worked.Term;

/**
 * Formulas with their numbers in JSON, as {@code worked[]}: a key is the symbol in letters that any program takes, with the
 * unit behind it.
 */
public final class WorkedJson {
    private WorkedJson() {}

    /**
     * Prints formulas where they stand.
     *
     * @param formulas the formulas, in order
     * @param json the object that they are told of
     */
    public static void print(List<Worked> formulas, JsonWriter json) {
        json.key("worked").array();
        for (Worked worked : formulas) {
            json.object().field("name", worked.name()).field("equation", worked.equation());
            json.key("inputs").object();
            worked.inputs().forEach(input -> json.field(key(input), input.value()));
            json.end().field(key(worked.result()), worked.result().value()).field("source", worked.source());
            json.end();
        }
        json.end();
    }

    private static String key(Term term) {
        String symbol = term.symbol().replace("ρ", "rho").replace("ψ", "psi");
        return term.unit().equals("1") ? symbol : symbol + "_" + letters(term.unit());
    }

    private static String letters(String unit) {
        return unit.replace('/', '_').replace("·", "").replace('²', '2').replace('³', '3');
    }
}
