package laminate.cli;

import java.util.List;
import laminate.material.Materials;
import laminate.plan.infusion.MouldingPlan;
import laminate.print.Printer;
import laminate.print.mix.JobSheetMarkdown;
import laminate.print.mix.JobSheetText;

/** {@code laminate jobsheet}: what the crew takes to the mould, a page a stage. */
final class JobSheetCommand extends Command {
    static final String NAME = "jobsheet";

    private final PartInput parts;
    private final ShopOptions shop;
    private final PageOptions page = PageOptions.forReading(this);

    JobSheetCommand(Materials library) {
        super(
                NAME,
                "A page for each lay-up stage: layers in order, mixes in g and ml, boxes to tick, readings to write down,"
                        + " what to mind. In text a form feed begins each page but the first.",
                "laminate jobsheet locker-lid.yaml -o sheets.txt",
                "laminate jobsheet locker-lid.yaml --temperature 22C --format markdown");
        parts = new PartInput(this, library).withSets();
        shop = new ShopOptions(this);
    }

    @Override
    public Integer call() {
        page.check(parts);
        shop.check();
        Printer<MouldingPlan> printer = page.format() == Format.TEXT
                ? new JobSheetText(page.system(), page.width(), page.style())
                : new JobSheetMarkdown(page.system());
        List<MouldingPlan> plans = parts.each(shop.addTo(parts.overrides()), shop::plan);
        print(page.file(), out -> printer.print(plans, out));
        return shop.verdict(plans.stream().map(MouldingPlan::mixes).toList());
    }
}
