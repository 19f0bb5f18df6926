package laminate.quote;

import static laminate.quote.TestYard.ANY;
import static laminate.quote.TestYard.HATCH;
import static laminate.quote.TestYard.LID;
import static laminate.quote.TestYard.MOULD;
import static laminate.quote.TestYard.PLUG;
import static laminate.quote.TestYard.bought;
import static laminate.quote.TestYard.made;
import static laminate.quote.TestYard.on;
import static laminate.quote.TestYard.sheet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalInt;
import laminate.part.Part;
import laminate.part.Tooling;
import laminate.quote.price.Pricing;
import org.junit.jupiter.api.Test;

/** Which moulds and plugs are one, and in what order they stand. */
class ToolUseTest {

    private static List<ToolUse> tools(Part... parts) {
        return ToolUse.of(List.of(parts), 1, Pricing.AT_COST);
    }

    private static List<String> names(Part... parts) {
        return tools(parts).stream().map(ToolUse::name).toList();
    }

    /** The hatch stands on the plug itself, which has to come after the mould all the same. */
    @Test
    void everyToolComesBeforeWhatItIsMadeOn() {
        Part mould = on(MOULD, PLUG, ANY, ANY);

        assertThat(names(on(HATCH, PLUG, ANY, ANY), on(LID, mould, ANY, ANY))).containsExactly("lid mould", "lid plug");
        assertThat(tools(on(HATCH.withCount(4), PLUG, ANY, ANY), on(LID, mould, ANY, ANY))
                        .get(1)
                        .pulls())
                .isEqualTo(5);
    }

    @Test
    void theSamePartInAnyNumberIsOneMould() {
        assertThat(tools(
                        on(LID, MOULD, ANY, ANY),
                        on(HATCH, sheet("lid mould", 20).withCount(3), ANY, ANY)))
                .extracting(ToolUse::pulls)
                .containsExactly(2.0);
        assertThat(names(on(LID, MOULD, ANY, ANY), on(HATCH, sheet("lid mould", 21), ANY, ANY)))
                .containsExactly("lid mould", "lid mould");
        assertThat(names(on(LID, MOULD, ANY, ANY), on(HATCH, on(MOULD, PLUG, ANY, ANY), ANY, ANY)))
                .containsExactly("lid mould", "lid mould", "lid plug");
    }

    @Test
    void boughtMouldsAreOneUnderOneNameOnly() {
        Tooling tray = bought("300.00", ANY);

        assertThat(names(on(LID, tray.named("tray")), on(HATCH, tray.named("tray"))))
                .containsExactly("tray");
        assertThat(names(on(LID, tray.named("tray")), on(HATCH, tray.named("dish"))))
                .containsExactly("tray", "dish");
        assertThat(names(on(LID, tray), on(HATCH, tray), on(LID, tray.named("tray"))))
                .containsExactly("mould", "mould", "tray");
        assertThat(names(on(LID, MOULD, ANY, ANY), on(HATCH, tray.named("lid mould"))))
                .containsExactly("lid mould", "lid mould");
    }

    @Test
    void aMouldGoesByItsOwnNameBeforeThatOfItsPart() {
        assertThat(names(on(LID, made(MOULD, ANY, ANY).named("tray")))).containsExactly("tray");
        assertThat(names(LID, HATCH)).isEmpty();
        assertThatThrownBy(() -> Tooling.NONE.named(" ")).hasMessage("the name of a mould must not be blank");
    }

    /** The mould is sold too: its own making is one more pull off the plug. */
    @Test
    void aMouldThatIsSoldTooIsMadeOnThePlugOnceMore() {
        Part mould = on(MOULD, PLUG, ANY, ANY);

        assertThat(tools(on(LID, mould, ANY, ANY), mould.withCount(2)).get(1).pulls())
                .isEqualTo(3);
    }

    /** Nine pulls off moulds that last two: five, or three beside two in hand, off plugs that last two. */
    @Test
    void whatIsInHandIsNotMadeNow() {
        Part mould = on(MOULD, PLUG, OptionalInt.of(2), ANY);
        Tooling stated = made(mould, OptionalInt.of(2), ANY);

        assertThat(tools(on(LID.withCount(9), stated)))
                .extracting(ToolUse::toMake)
                .containsExactly(5, 3);
        assertThat(tools(on(LID.withCount(9), stated.withInHand(2))))
                .extracting(ToolUse::toMake)
                .containsExactly(3, 2);
        assertThat(tools(on(LID.withCount(9), stated.withInHand(6))))
                .extracting(ToolUse::toMake)
                .containsExactly(0, 0);
        assertThat(tools(on(LID.withCount(8), stated), on(HATCH, stated.withInHand(2))))
                .extracting(ToolUse::toMake)
                .containsExactly(3, 2);
        assertThat(tools(on(LID.withCount(9), stated.withInHand(6))))
                .extracting(ToolUse::made)
                .containsExactly(5, 3);
    }

    @Test
    void aMouldHasOneLifeOnePlanAndOnePrice() {
        Part lid = on(LID, MOULD, OptionalInt.of(9), ANY);
        assertThatThrownBy(() -> tools(lid, on(HATCH, MOULD, OptionalInt.of(8), ANY)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("lid mould is shared; it has a life of 9 in one place and 8 in another");
        assertThatThrownBy(() -> tools(lid, on(HATCH, MOULD, OptionalInt.of(9), OptionalInt.of(7))))
                .hasMessage("lid mould is shared; it has planned pulls of none in one place and 7 in another");
        assertThatThrownBy(() -> tools(
                        on(LID, bought("300.00", ANY).named("tray")),
                        on(HATCH, bought("310.00", ANY).named("tray"))))
                .hasMessage("tray is shared; it has a price of 300.00 GBP in one place and 310.00 GBP in another");
    }
}
