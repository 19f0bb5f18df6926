package laminate.quote;

import static laminate.quote.TestYard.gbp;
import static laminate.quote.TestYard.made;
import static laminate.quote.TestYard.on;
import static laminate.quote.TestYard.sheet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import laminate.part.Part;
import laminate.part.Tooling;
import laminate.quote.price.Pricing;
import laminate.unit.Money;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for any parts on any moulds and plugs, in sets that are drawn by chance, each from its own seed. */
class SharedToolsTest {

    private static final int SETS = 1000;
    private static final int FEW = 200;

    private static IntStream seeds() {
        return IntStream.range(0, SETS);
    }

    private static IntStream fewSeeds() {
        return IntStream.range(SETS, SETS + FEW);
    }

    /**
     * A set drawn by chance, with the cost of each tool by its name.
     *
     * @param number the number of sets
     */
    private record Drawn(List<Part> parts, int number, Pricing pricing, Map<String, Money> costs) {

        ToolCosts reckoned() {
            return reckoned(parts);
        }

        ToolCosts reckoned(List<Part> others) {
            Function<Tooling, Money> each = tool -> costs.get(tool.mouldName());
            return new ToolCosts(new Tools(others, number, pricing), each);
        }
    }

    /** Parts on one to four moulds, and some on plugs themselves; the moulds on one to three plugs. */
    private static Drawn draw(int seed, boolean planned, boolean rejects) {
        Random random = new Random(seed);
        Map<String, Money> costs = new HashMap<>();
        List<Tooling> plugs = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(3); i++) {
            plugs.add(tool(random, sheet("plug " + i, 1), planned, costs));
        }
        List<Tooling> tools = new ArrayList<>(plugs);
        for (int i = 0; i <= random.nextInt(4); i++) {
            Part mould = sheet("mould " + i, 1);
            tools.add(tool(random, random.nextInt(5) == 0 ? mould : on(mould, any(plugs, random)), planned, costs));
        }
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(6); i++) {
            parts.add(on(sheet("part " + i, 1).withCount(1 + random.nextInt(9)), any(tools, random)));
        }
        double share =
                rejects ? List.of(0.05, 1.0 / 3, 0.5, random.nextDouble() * 0.9).get(random.nextInt(4)) : 0;
        return new Drawn(parts, 1 + random.nextInt(30), Pricing.AT_COST.withRejects(share), costs);
    }

    private static Tooling tool(Random random, Part part, boolean planned, Map<String, Money> costs) {
        costs.put(part.name(), new Money(BigDecimal.valueOf(random.nextInt(50_000), 2), "GBP"));
        return made(
                part,
                random.nextBoolean() ? OptionalInt.of(1 + random.nextInt(12)) : OptionalInt.empty(),
                planned && random.nextBoolean() ? OptionalInt.of(1 + random.nextInt(60)) : OptionalInt.empty());
    }

    private static Tooling any(List<Tooling> tools, Random random) {
        return tools.get(random.nextInt(tools.size()));
    }

    private static List<Money> shares(ToolCosts reckoned) {
        return reckoned.tools().parts().stream()
                .map(part -> reckoned.moulds(part).get(0).share(part.pulls()))
                .toList();
    }

    private static Money sum(Stream<Money> amounts) {
        return amounts.reduce(gbp("0.00"), Money::plus);
    }

    /** What a number of pulls would bear by itself. */
    private static Money share(SetQuote.ToolCost tool, double pulls) {
        double whole =
                Math.max(tool.use().pulls(), tool.use().tooling().plannedPulls().orElse(0));
        return tool.all().times(pulls / whole);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theSharesOfAToolAddUpToWhatIsBorneOfIt(int seed) {
        for (SetQuote.ToolCost tool : draw(seed, true, true).reckoned().batch().tools()) {
            assertThat(tool.borne()).isEqualTo(share(tool, tool.use().pulls()));
            for (SetQuote.Share share : tool.shares()) {
                assertThat(share.bears().amount())
                        .isNotNegative()
                        .isCloseTo(share(tool, share.pulls()).amount(), within(new BigDecimal("0.01")));
            }
        }
    }

    /** Of the plugs too: what is made is paid, no more and no less, where nothing is planned for pulls to come. */
    @ParameterizedTest
    @MethodSource("seeds")
    void thePartsPayForAllThatIsMade(int seed) {
        ToolCosts reckoned = draw(seed, false, true).reckoned();

        Money made = sum(reckoned.batch().tools().stream()
                .map(tool -> tool.each().times(tool.use().made())));
        assertThat(sum(shares(reckoned).stream())).isEqualTo(made);
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void whatAPartBearsIsWhatTheTableOfToolsTells(int seed) {
        ToolCosts reckoned = draw(seed, true, true).reckoned();
        Map<String, Money> told = new HashMap<>();
        reckoned.batch().tools().forEach(tool -> tool.shares().forEach(share -> told.put(share.by(), share.bears())));

        List<Money> shares = shares(reckoned);
        for (int i = 0; i < shares.size(); i++) {
            assertThat(shares.get(i)).isEqualTo(told.get("part " + i));
        }
    }

    /** Which of two moulds bears the odd coin of their plug hangs on the order, the sums do not. */
    @ParameterizedTest
    @MethodSource("fewSeeds")
    void theOrderOfThePartsDoesNotChangeTheSums(int seed) {
        Drawn drawn = draw(seed, false, true);
        List<Part> others = new ArrayList<>(drawn.parts());
        Collections.shuffle(others, new Random(seed));
        ToolCosts shuffled = drawn.reckoned(others);

        assertThat(shuffled.batch().tools())
                .extracting(SetQuote.ToolCost::use)
                .containsExactlyInAnyOrderElementsOf(uses(drawn));
        assertThat(sum(shares(shuffled).stream())).isEqualTo(sum(shares(drawn.reckoned()).stream()));
    }

    private static List<ToolUse> uses(Drawn drawn) {
        return ToolUse.of(drawn.parts(), drawn.number(), drawn.pricing());
    }

    private static Map<String, List<Object>> sums(ToolCosts reckoned) {
        Map<String, List<Object>> sums = new HashMap<>();
        reckoned.batch()
                .tools()
                .forEach(tool ->
                        sums.put(tool.use().name(), List.of(tool.use(), tool.each(), tool.all(), tool.borne())));
        return sums;
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void aPartThatIsSplitInTwoHalvesBearsTheSame(int seed) {
        Drawn drawn = draw(seed, true, true);
        List<Part> whole = new ArrayList<>(drawn.parts());
        List<Part> split = new ArrayList<>(drawn.parts());
        Part half = split.get(0);
        whole.set(0, half.withCount(2 * half.count()));
        split.add(0, half);

        List<Money> shares = shares(drawn.reckoned(split));

        assertThat(shares.get(0).plus(shares.get(1)))
                .isEqualTo(shares(drawn.reckoned(whole)).get(0));
        assertThat(sums(drawn.reckoned(split))).isEqualTo(sums(drawn.reckoned(whole)));
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void moreSetsNeverTakeFewerTools(int seed) {
        Drawn drawn = draw(seed, true, true);
        List<Integer> before = Collections.nCopies(uses(drawn).size(), 1);
        for (int number : List.of(1, 2, 3, 7, 20, 50)) {
            List<Integer> made = ToolUse.of(drawn.parts(), number, drawn.pricing()).stream()
                    .map(ToolUse::made)
                    .toList();
            for (int i = 0; i < made.size(); i++) {
                assertThat(made.get(i)).isGreaterThanOrEqualTo(before.get(i));
            }
            before = made;
        }
    }

    /** Against a yard that pulls one after the other and makes a new mould when the last is worn; what is planned comes last. */
    @ParameterizedTest
    @MethodSource("seeds")
    void asManyToolsAreMadeAsAYardWearsOut(int seed) {
        Drawn drawn = draw(seed, true, false);
        Yard yard = new Yard();
        List<Tooling> pulls = new ArrayList<>();
        drawn.parts()
                .forEach(part -> pulls.addAll(Collections.nCopies(part.count() * drawn.number(), part.toolingInUse())));
        Collections.shuffle(pulls, new Random(seed));
        pulls.forEach(yard::pull);
        for (ToolUse use : uses(drawn)) {
            assertThat(use.toMake()).isEqualTo(yard.made.get(use.name()));
        }
        yard.pullWhatIsPlanned(uses(drawn));

        for (ToolUse use : uses(drawn)) {
            assertThat(use.made()).isEqualTo(yard.made.get(use.name()));
        }
    }

    private static final class Yard {
        private final Map<String, Integer> pulled = new HashMap<>();
        private final Map<String, Integer> leftInLast = new HashMap<>();
        private final Map<String, Integer> made = new HashMap<>();

        void pull(Tooling tool) {
            String name = tool.mouldName();
            pulled.merge(name, 1, Integer::sum);
            if (leftInLast.getOrDefault(name, 0) == 0) {
                Tooling below = tool.mould().orElseThrow().toolingInUse();
                if (below.hasMould()) {
                    pull(below);
                }
                made.merge(name, 1, Integer::sum);
                leftInLast.put(name, tool.life().orElse(Integer.MAX_VALUE));
            }
            leftInLast.merge(name, -1, Integer::sum);
        }

        /** Moulds before plugs, as more moulds are more pulls off the plugs. */
        void pullWhatIsPlanned(List<ToolUse> tools) {
            for (ToolUse tool : tools) {
                Tooling stated = tool.tooling();
                while (pulled.get(stated.mouldName()) < stated.plannedPulls().orElse(0)) {
                    pull(stated);
                }
            }
        }
    }
}
