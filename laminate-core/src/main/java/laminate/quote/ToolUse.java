package laminate.quote;

import java.util.List;
import java.util.Objects;
import laminate.part.Part;
import laminate.part.Tooling;
import laminate.quote.price.Pricing;

/**
 * What a mould or plug has to serve in a number of sets, and how many of it that takes.
 *
 * @param tooling the mould as it is stated where it is first met: its part or price, life and planned pulls
 * @param pulls what is pulled off it on the average, rejects among them (not a whole number); of a plug the moulds made
 * @param made how many of it are paid for: ⌈max(pulls, planned pulls)/life⌉, one at least
 * @param toMake how many of it are made or bought now: ⌈pulls/life⌉, without those in hand; of a plug the pulls are here the
 *     moulds to make now, so that for none there is none to make
 */
public record ToolUse(Tooling tooling, double pulls, int made, int toMake) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if pulls are not finite, or a number is below zero
     */
    public ToolUse {
        Objects.requireNonNull(tooling, "tooling");
        if (!Double.isFinite(pulls) || pulls < 0 || made < 0 || toMake < 0) {
            throw new IllegalArgumentException(tooling.mouldName() + ": pulls and numbers are zero or more, not "
                    + pulls + " pulls, " + made + " paid for and " + toMake + " to make");
        }
    }

    /**
     * What it is called.
     *
     * @return the name of the mould or plug
     */
    public String name() {
        return tooling.mouldName();
    }

    /**
     * The moulds and plugs of a number of sets. The same part is the same mould, and so is the same name of bought ones:
     * what is pulled off it is counted over all that is made on it. No price is asked for.
     *
     * @param parts the parts of a set, each with its number in the set
     * @param sets how many sets
     * @param pricing the rates, for the share of rejects
     * @return the tools, each before what it is made on; read backwards, plugs come first
     * @throws IllegalArgumentException if there are no parts or sets, or one mould is stated with two lives, two numbers
     *     of planned pulls or two prices
     */
    public static List<ToolUse> of(List<Part> parts, int sets, Pricing pricing) {
        return new Tools(parts, sets, pricing)
                .all().stream().map(Tools.Tool::use).toList();
    }
}
