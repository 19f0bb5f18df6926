package laminate.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.estimate.PartEstimate;
import laminate.estimate.PriceList;
import laminate.file.InputException;
import laminate.file.Job;
import laminate.file.StockFile;
import laminate.material.Materials;
import laminate.order.Order;
import laminate.order.Ordering;
import laminate.order.StockItem;
import laminate.order.cut.Cuts;
import laminate.order.pieces.Cutting;
import laminate.order.pieces.CuttingPlanner;
import laminate.order.pieces.CuttingRules;
import laminate.order.pieces.MaterialCut;
import laminate.print.MarkdownPrinter;
import laminate.print.Measures;
import laminate.print.Printer;
import laminate.print.TextPrinter;
import laminate.print.order.CuttingSvg;
import laminate.print.order.OrderCsv;
import laminate.print.order.OrderJson;
import laminate.print.order.OrderReport;
import laminate.print.order.OrderSheet;
import picocli.CommandLine.Model.OptionSpec;

/** {@code laminate order}: what to buy for one or more parts, in packs, less what is in stock. */
final class OrderCommand extends Command {
    static final String NAME = "order";

    private final PartInput parts;
    private final OptionSpec stock =
            option("--stock", "FILE", Path.class, "Stock file: what it lists is used up before anything is bought.");
    private final OptionSpec date = option(
            "--date",
            "DAY",
            new Day(),
            "Day of use, as 2026-03-02: stock past its day is left out, and days to order by are told.");
    private final OptionSpec cutting = flag(
            "--cutting", "Plan the pieces too, of zones that state their outline: cutting list, roll and sheet plans.");
    private final OptionSpec straight = flag(
            "--straight-cuts", "Pull a length off the roll and cut it straight across before any piece is cut out.");
    private final OptionSpec svg =
            option("--svg", "FOLDER", Path.class, "Draw each roll, and the sheets of each core, to scale 1:10 there.");
    private final PageOptions page = new PageOptions(
            this,
            new Words<>(OrderCsv.Which.values(), OrderCsv.Which::word),
            "Table of the CSV: lines (the default), packs, or with --cutting pieces or places.");

    OrderCommand(Materials library) {
        super(
                NAME,
                "What to buy for one or more parts: need with waste, what is in stock, packs at least cost, items, what sets up each batch, the moulds that a project buys, days to order by.",
                "laminate order locker-lid.yaml buoyancy-tank.yaml --stock stock.yaml",
                "laminate order locker-lid.yaml --cutting --straight-cuts --svg drawings",
                "laminate order lockers.yaml --sets 10",
                "laminate order parts/*.yaml --date 2026-03-02 --format csv -o order.csv");
        parts = new PartInput(this, library).withSets();
    }

    @Override
    public Integer call() {
        page.check(parts);
        refuseToOverwrite(page.file(), given(stock, Path.class).stream().toList());
        refuse(isSet(straight) && !isCut(), "--straight-cuts goes with --cutting or --svg");
        OrderCsv.Which table = page.table(OrderCsv.Which.class).orElse(OrderCsv.Which.LINES);
        refuse(table.isOfCutting() && !isCut(), "--table " + table.word() + " goes with --cutting");
        Printer<OrderSheet> printer = printer(table);
        List<Job> jobs = new ArrayList<>();
        List<PartEstimate> estimates = parts.each(job -> {
            jobs.add(job);
            return job.estimate();
        });
        OrderSheet sheet = sheet(jobs, estimates);
        given(svg, Path.class).ifPresent(folder -> draw(sheet, folder));
        return print(page.file(), out -> printer.print(List.of(sheet), out));
    }

    private boolean isCut() {
        return isSet(cutting) || given(svg, Path.class).isPresent();
    }

    private OrderSheet sheet(List<Job> jobs, List<PartEstimate> estimates) {
        try {
            List<PriceList> lists =
                    jobs.stream().flatMap(job -> job.prices().stream()).toList();
            Optional<PriceList> prices = PriceList.joined(lists);
            Cutting cut = isCut() ? new CuttingPlanner(prices, rules()).plan(estimates) : Cutting.NONE;
            Order order = new Ordering(prices, stock(jobs), given(date, LocalDate.class))
                    .order(estimates, cut, parts.toBuy());
            return new OrderSheet(estimates, withRejects(order, jobs), cut);
        } catch (InputException e) {
            throw new UnusableInputException(e.getMessage());
        } catch (IllegalArgumentException e) {
            throw new UnusableInputException("order: " + e.getMessage());
        }
    }

    /** Who orders for good mouldings alone runs short by those that fail. */
    private static Order withRejects(Order order, List<Job> jobs) {
        double rejects = 0;
        for (Job job : jobs) {
            rejects = Math.max(
                    rejects, job.terms().map(terms -> terms.pricing().rejects()).orElse(0.0));
        }
        return rejects == 0
                ? order
                : order.withRemark("what rejects take is not ordered; the workshop's pricing reckons with "
                        + Measures.percent(rejects) + " % of all that is pulled");
    }

    private CuttingRules rules() {
        return CuttingRules.USUAL.withCuts(isSet(straight) ? Cuts.ACROSS : Cuts.FREE);
    }

    private void draw(OrderSheet sheet, Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (FileAlreadyExistsException e) {
            throw new UnusableInputException(folder + ": this is a file; the name of a folder is wanted");
        } catch (IOException e) {
            throw new UnusableInputException(folder + ": this folder cannot be made: " + e.getMessage());
        }
        for (MaterialCut cut : sheet.cutting().materials()) {
            print(
                    Optional.of(folder.resolve(CuttingSvg.fileName(cut))),
                    out -> CuttingSvg.print(cut, sheet.order(), out));
        }
    }

    private List<StockItem> stock(List<Job> jobs) {
        Optional<Path> file = given(stock, Path.class);
        return file.isEmpty() ? List.of() : StockFile.read(file.get(), materials(jobs));
    }

    /** What any of the parts may be made of. */
    private static Materials materials(List<Job> jobs) {
        Materials all = jobs.get(0).materials();
        for (Job job : jobs.subList(1, jobs.size())) {
            all = job.materials().equals(all) ? all : all.overlaidBy(job.materials());
        }
        return all;
    }

    private Printer<OrderSheet> printer(OrderCsv.Which table) {
        OrderReport reports = new OrderReport(page.system());
        return switch (page.format()) {
            case TEXT -> new TextPrinter<>(reports::of, page.width(), page.style());
            case JSON -> new OrderJson();
            case CSV -> new OrderCsv(table, page.system());
            case MARKDOWN -> new MarkdownPrinter<>(reports::of);
        };
    }
}
