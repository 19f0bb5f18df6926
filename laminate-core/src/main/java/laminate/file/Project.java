package laminate.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import laminate.estimate.Estimator;
import laminate.estimate.PriceList;
import laminate.part.Item;
import laminate.part.Part;
import laminate.process.Workshop;
import laminate.quote.QuotationText;
import laminate.quote.Quoting;
import laminate.quote.SetQuote;
import laminate.quote.Terms;
import laminate.quote.ToolUse;
import laminate.quote.WholePacks;

/**
 * What one yard makes for one job: mouldings, the moulds these are made on, and the plugs that those are made on. Several
 * mouldings may share a mould, and several moulds a plug.
 *
 * @param name what the project is called
 * @param mouldings what is made for the customer, each in its number in a set; all in one workshop, at one price list
 * @param tools the moulds and plugs that are made in the same workshop, each with its own tooling
 * @param files the files all this was read from
 */
public record Project(String name, List<Job> mouldings, List<Job> tools, List<Path> files) implements Work {

    /**
     * Checks the project.
     *
     * @throws IllegalArgumentException if the name is blank, there are no mouldings, or they are not made in one workshop at
     *     one price list
     */
    public Project {
        mouldings = List.copyOf(mouldings);
        tools = List.copyOf(tools);
        files = List.copyOf(files);
        if (name.isBlank()) {
            throw new IllegalArgumentException("a project needs a name");
        }
        if (mouldings.isEmpty()) {
            throw new IllegalArgumentException(name + " has no mouldings");
        }
        checkOneYard(name, mouldings, mouldings.get(0));
        checkOneYard(name, tools, mouldings.get(0));
    }

    /**
     * The workshop that all is made in.
     *
     * @return its figures
     */
    public Workshop workshop() {
        return first().workshop();
    }

    /**
     * What things cost.
     *
     * @return the price list, empty where none is named
     */
    public Optional<PriceList> prices() {
        return first().prices();
    }

    /**
     * What the yard quotes by.
     *
     * @return the terms, empty where the workshop states no pricing
     */
    public Optional<Terms> terms() {
        return first().terms();
    }

    /**
     * What the yard writes on its quotations.
     *
     * @return the text
     */
    public QuotationText quotation() {
        return first().quotation();
    }

    @Override
    public List<Job> jobs() {
        return jobs(1);
    }

    /**
     * All that is to be made for a number of sets: plugs first, then moulds, then mouldings. Of a tool there are as many as
     * the pulls of these sets and its life ask for, rejects counted where pricing states them, without those in hand; a tool
     * of which enough are in hand is left out, and so is the plug of moulds of which none is made. Pulls that are planned
     * beyond these sets share the cost, see {@link ToolUse#made()}, but nothing is made for them yet.
     *
     * @param sets how many sets
     * @return the jobs, each with its part in the number to make
     * @throws IllegalArgumentException if the number is below one, or so large that parts can no longer be counted
     */
    public List<Job> jobs(int sets) {
        List<Job> jobs = new ArrayList<>();
        Map<Part, Job> known = new HashMap<>();
        tools.forEach(tool -> known.put(tool.part().withCount(1), tool));
        for (ToolUse use : uses(sets)) {
            Optional<Job> tool = use.tooling().mould().map(mould -> known.get(mould.withCount(1)));
            if (tool.isPresent() && use.toMake() > 0) {
                jobs.add(0, tool.get().withCount(use.toMake()));
            }
        }
        for (Job moulding : mouldings) {
            jobs.add(moulding.with(moulding.part().inSets(sets), moulding.files()));
        }
        return jobs;
    }

    /**
     * The moulds and plugs that are to be bought for a number of sets: those of the project's tooling that have a price, as
     * many as the pulls of these sets and their life ask for, without those in hand.
     *
     * @param sets how many sets
     * @return what is to be bought
     * @throws IllegalArgumentException if the number is below one
     */
    public List<Item> toBuy(int sets) {
        return uses(sets).stream()
                .filter(use -> use.toMake() > 0 && use.tooling().mould().isEmpty())
                .filter(use -> use.tooling().name().isPresent())
                .map(use -> new Item(use.name(), use.toMake(), 0, use.tooling().price()))
                .toList();
    }

    /**
     * The moulds and plugs that a number of sets takes, made and bought ones, those in hand among them.
     *
     * @param sets how many sets
     * @return the tools, each before what it is made on
     * @throws IllegalArgumentException if the number is below one
     */
    public List<ToolUse> uses(int sets) {
        return ToolUse.of(parts(), sets, terms().orElse(Terms.AT_COST).pricing());
    }

    /**
     * Quotes the mouldings as a set, with the moulds and plugs that they share.
     *
     * @param sets the numbers of sets asked for
     * @return an offer of each moulding for each number, and what the moulds and plugs cost
     * @throws IllegalArgumentException if the workshop states no pricing, or a price is missing, saying which
     */
    public SetQuote quote(List<Integer> sets) {
        return new Quoting(estimator(), workshop(), stated()).quoteSet(parts(), sets);
    }

    /**
     * Quotes the mouldings as a set, each with its materials at the whole packs that are bought for its batch alone.
     *
     * @param sets the numbers of sets asked for
     * @return an offer of each moulding for each number, and what the moulds and plugs cost
     * @throws IllegalArgumentException if the workshop states no pricing, or a price is missing, saying which
     */
    public SetQuote quoteAsBought(List<Integer> sets) {
        return new Quoting(estimator(), workshop(), stated(), new WholePacks(first().listed())).quoteSet(parts(), sets);
    }

    private Estimator estimator() {
        return new Estimator(workshop(), prices());
    }

    private Terms stated() {
        return first().stated();
    }

    private Job first() {
        return mouldings.get(0);
    }

    private List<Part> parts() {
        return mouldings.stream().map(Job::part).toList();
    }

    private static void checkOneYard(String name, List<Job> jobs, Job first) {
        for (Job job : jobs) {
            if (!job.workshop().equals(first.workshop()) || !job.prices().equals(first.prices())) {
                throw new IllegalArgumentException(name + ": " + job.part().name()
                        + " is of another workshop or at other prices than "
                        + first.part().name());
            }
        }
    }
}
