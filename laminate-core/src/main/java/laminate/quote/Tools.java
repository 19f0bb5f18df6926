package laminate.quote;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import laminate.part.Part;
import laminate.part.Tooling;
import laminate.quote.price.Mould;
import laminate.quote.price.OtherPulls;
import laminate.quote.price.Pricing;

/**
 * The moulds and plugs that a batch is made on, each with all that is made on it.
 *
 * <p>A part stands on its mould, that on its plug, and so on. They are gone through from the highest down, so that the number
 * of a tool is known before those that it is made on are counted; all that stands on one tool is equally high.
 */
final class Tools {

    /** A part of the batch, or a tool, as that which is made on another. No two are equal, though their parts may be. */
    static final class Made {
        private final String name;
        private final Tooling on;
        private final double pulls;
        private final double pullsNow;

        private Made(String name, Tooling on, double pulls, double pullsNow) {
            this.name = name;
            this.on = on;
            this.pulls = pulls;
            this.pullsNow = pullsNow;
        }

        String name() {
            return name;
        }

        Tooling on() {
            return on;
        }

        /** What is pulled of it, rejects among them. */
        double pulls() {
            return pulls;
        }
    }

    /**
     * A mould or plug.
     *
     * @param tooling as it is stated first
     * @param takers what is made on it
     * @param use how often, and how many of it that takes
     * @param made itself as what is made on another
     */
    record Tool(Tooling tooling, List<Made> takers, ToolUse use, Made made) {

        private static Tool under(List<Made> takers) {
            Tooling tooling = takers.get(0).on;
            double pulls = sum(takers).doubleValue();
            int number = Mould.number(Math.max(pulls, tooling.plannedPulls().orElse(0)), tooling.life());
            int toMake = toMake(tooling, takers);
            Tooling below = tooling.mould().map(Part::toolingInUse).orElse(Tooling.NONE);
            Made made = new Made(tooling.mouldName(), below, number, toMake);
            return new Tool(tooling, takers, new ToolUse(tooling, pulls, number, toMake), made);
        }

        /** Whoever states most in hand is believed. */
        private static int toMake(Tooling tooling, List<Made> takers) {
            double pulls = takers.stream().mapToDouble(taker -> taker.pullsNow).sum();
            int inHand =
                    takers.stream().mapToInt(taker -> taker.on.inHand()).max().orElse(0);
            return pulls > 0 ? Math.max(0, Mould.number(pulls, tooling.life()) - inHand) : 0;
        }

        OtherPulls others(Made taker) {
            int place = takers.indexOf(taker);
            return new OtherPulls(sum(takers.subList(0, place)), sum(takers.subList(place + 1, takers.size())));
        }

        private static BigDecimal sum(List<Made> takers) {
            return takers.stream().map(taker -> new BigDecimal(taker.pulls)).reduce(BigDecimal.ZERO, BigDecimal::add);
        }
    }

    private final int sets;
    private final List<Part> batch;
    private final List<Made> parts;
    private final List<Tool> all = new ArrayList<>();

    /**
     * The tools of so many sets of parts.
     *
     * @throws IllegalArgumentException as {@link ToolUse#of} does
     */
    Tools(List<Part> set, int sets, Pricing pricing) {
        this.sets = sets;
        batch = batch(set, sets);
        parts = batch.stream()
                .map(part -> {
                    double pulls = pricing.pulls(part.count());
                    return new Made(part.name(), part.toolingInUse(), pulls, pulls);
                })
                .toList();
        List<Tool> above = List.of();
        for (int height = highest(); height > 0; height--) {
            above = toolsUnder(level(height, above));
            all.addAll(above);
        }
    }

    int sets() {
        return sets;
    }

    /** The parts in the order of the set, each in the number made of it. */
    List<Part> batch() {
        return batch;
    }

    /** The same parts as what is made. */
    List<Made> parts() {
        return parts;
    }

    /** The tools, each before what it is made on. */
    List<Tool> all() {
        return all;
    }

    /** What something is made on. */
    Optional<Tool> under(Made made) {
        return all.stream().filter(tool -> tool.takers.contains(made)).findFirst();
    }

    private int highest() {
        return parts.stream().mapToInt(part -> height(part.on)).max().orElse(0);
    }

    /** Those parts of the batch, and those tools, that stand as high. */
    private List<Made> level(int height, List<Tool> tools) {
        List<Made> level = new ArrayList<>();
        parts.stream().filter(part -> height(part.on) == height).forEach(level::add);
        tools.stream().map(Tool::made).filter(made -> made.on.hasMould()).forEach(level::add);
        return level;
    }

    private static List<Tool> toolsUnder(List<Made> level) {
        List<List<Made>> groups = new ArrayList<>();
        for (Made made : level) {
            groups.stream()
                    .filter(group -> isOneMould(group.get(0).on, made.on))
                    .findFirst()
                    .ifPresentOrElse(group -> group.add(made), () -> groups.add(new ArrayList<>(List.of(made))));
        }
        return groups.stream().map(Tool::under).toList();
    }

    /** The same part is the same mould, in whatever number it is stated; bought ones go by their name. */
    private static boolean isOneMould(Tooling one, Tooling other) {
        boolean same = one.mould().isPresent() && other.mould().isPresent()
                ? isSame(one.mould().get(), other.mould().get())
                : one.mould().equals(other.mould())
                        && one.name().isPresent()
                        && one.name().equals(other.name());
        if (same) {
            checkAlike(one, other);
        }
        return same;
    }

    /** Looks first whether they are one: to compare records costs the Java machine some time at the first time. */
    private static boolean isSame(Part one, Part other) {
        return one == other || one.withCount(1).equals(other.withCount(1));
    }

    private static int height(Tooling on) {
        return on.hasMould()
                ? 1 + on.mould().map(Part::toolingInUse).map(Tools::height).orElse(0)
                : 0;
    }

    private static void checkAlike(Tooling one, Tooling other) {
        checkAlike(one, "a life of ", one.life(), other.life());
        checkAlike(one, "planned pulls of ", one.plannedPulls(), other.plannedPulls());
        if (one.mould().isEmpty() && !one.price().equals(other.price())) {
            throw different(one, "a price of ", one.price().get(), other.price().get());
        }
    }

    private static void checkAlike(Tooling mould, String what, OptionalInt one, OptionalInt other) {
        if (!one.equals(other)) {
            throw different(mould, what, shown(one), shown(other));
        }
    }

    private static IllegalArgumentException different(Tooling mould, String what, Object one, Object other) {
        return new IllegalArgumentException(
                mould.mouldName() + " is shared; it has " + what + one + " in one place and " + other + " in another");
    }

    private static String shown(OptionalInt pulls) {
        return pulls.isPresent() ? Integer.toString(pulls.getAsInt()) : "none";
    }

    private static List<Part> batch(List<Part> set, int sets) {
        if (set.isEmpty()) {
            throw new IllegalArgumentException("a set has one part or more");
        }
        if (sets < 1) {
            throw new IllegalArgumentException("a batch is of one or more, not " + sets);
        }
        return set.stream().map(part -> part.inSets(sets)).toList();
    }
}
