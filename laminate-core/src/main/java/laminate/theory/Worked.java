package laminate.theory;

import java.util.List;
import java.util.Objects;

/**
 * A formula with its numbers, as it would be shown on the board: what goes in, what comes out, and whose formula it is. Made
 * only for whoever asks how a figure comes about; a calculation calls the formula itself.
 *
 * @param name what is worked out
 * @param equation the equation in the symbols of its terms, the result's on the left
 * @param inputs what goes in, in the order of the equation's explanation
 * @param result what comes out
 * @param source whose formula it is
 */
public record Worked(String name, String equation, List<Term> inputs, Term result, String source) {

    /**
     * Copies the inputs, and checks that the equation speaks of every term.
     *
     * @throws IllegalArgumentException if name or source is blank, there is no input, or the equation lacks a symbol
     */
    public Worked {
        inputs = List.copyOf(inputs);
        Objects.requireNonNull(result, "result");
        if (name.isBlank() || source.isBlank() || inputs.isEmpty()) {
            throw new IllegalArgumentException("a worked formula has a name, inputs and a source, not '" + name + "', "
                    + inputs + ", '" + source + "'");
        }
        if (!equation.startsWith(result.symbol() + " = ")) {
            throw new IllegalArgumentException("'" + equation + "' does not begin with '" + result.symbol() + " = '");
        }
        for (Term input : inputs) {
            if (!equation.contains(input.symbol())) {
                throw new IllegalArgumentException("'" + equation + "' lacks '" + input.symbol() + "'");
            }
        }
    }

    /**
     * A symbol of a formula with its number.
     *
     * @param symbol as in the equation
     * @param value the number, in SI
     * @param unit the symbol of its SI unit; "1" for a bare number
     */
    public record Term(String symbol, double value, String unit) {
        /**
         * Checks the term.
         *
         * @throws IllegalArgumentException if symbol or unit is blank, or the number is not finite
         */
        public Term {
            if (symbol.isBlank() || unit.isBlank()) {
                throw new IllegalArgumentException(
                        "a term has a symbol and a unit, not '" + symbol + "' and '" + unit + "'");
            }
            Require.finite(symbol, value);
        }
    }
}
