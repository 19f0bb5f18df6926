package laminate.order.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What every plan must be, worked out from the places alone and in metres. */
final class Soundness {
    /** Edges may miss each other by some thousand-millionths of the width. */
    private static final double SLACK = 1e-8;

    private Soundness() {}

    static void check(RollPlan plan, List<Piece> pieces) {
        List<Placement> placed = plan.placements();
        double slack = SLACK * plan.width();
        checkAllPlaced(placed, pieces);
        checkApart(placed, slack);
        checkWithin(placed, plan.width(), 0, plan.length(), slack);
        assertThat(placed.stream().mapToDouble(p -> p.y() + p.along()).max().orElseThrow())
                .isCloseTo(plan.length(), within(slack));
        assertThat(plan.length()).isGreaterThanOrEqualTo(plan.lowerBound());
        checkPulls(plan, slack);
        for (Offcut offcut : plan.offcuts()) {
            checkFree(offcut, placed, plan.width(), plan.length(), slack);
        }
        checkOffcutsApart(plan.offcuts(), slack);
    }

    static void check(SheetPlan plan, List<Piece> pieces) {
        double slack = SLACK * Math.max(plan.width(), plan.length());
        checkAllPlaced(
                plan.sheets().stream().flatMap(s -> s.placements().stream()).toList(), pieces);
        assertThat(plan.sheets()).hasSizeGreaterThanOrEqualTo(plan.lowerBound());
        for (Sheet sheet : plan.sheets()) {
            checkApart(sheet.placements(), slack);
            checkWithin(sheet.placements(), plan.width(), 0, plan.length(), slack);
            for (Offcut offcut : sheet.offcuts()) {
                checkFree(offcut, sheet.placements(), plan.width(), plan.length(), slack);
            }
            checkOffcutsApart(sheet.offcuts(), slack);
        }
    }

    private static void checkAllPlaced(List<Placement> placed, List<Piece> pieces) {
        Map<Piece, Long> wanted =
                pieces.stream().collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        assertThat(placed.stream().collect(Collectors.groupingBy(Placement::piece, Collectors.counting())))
                .isEqualTo(wanted);
    }

    private static void checkApart(List<Placement> placed, double slack) {
        for (int i = 0; i < placed.size(); i++) {
            for (Placement other : placed.subList(i + 1, placed.size())) {
                if (overlap(placed.get(i), other, slack)) {
                    fail(placed.get(i) + " lies over " + other);
                }
            }
        }
    }

    private static boolean overlap(Placement one, Placement other, double slack) {
        return shared(one.x(), one.across(), other.x(), other.across()) > slack
                && shared(one.y(), one.along(), other.y(), other.along()) > slack;
    }

    private static double shared(double from, double size, double otherFrom, double otherSize) {
        return Math.min(from + size, otherFrom + otherSize) - Math.max(from, otherFrom);
    }

    private static void checkWithin(List<Placement> placed, double width, double from, double to, double slack) {
        for (Placement p : placed) {
            assertThat(p.x() + p.across()).as("%s", p).isLessThanOrEqualTo(width + slack);
            assertThat(p.y()).as("%s", p).isGreaterThanOrEqualTo(from - slack);
            assertThat(p.y() + p.along()).as("%s", p).isLessThanOrEqualTo(to + slack);
        }
    }

    private static void checkPulls(RollPlan plan, double slack) {
        double end = 0;
        for (Pull pull : plan.pulls()) {
            assertThat(pull.from()).isCloseTo(end, within(slack));
            end = pull.from() + pull.length();
            checkWithin(pull.placements(), plan.width(), pull.from(), end, slack);
            assertThat(pull.placements())
                    .isSortedAccordingTo(
                            Comparator.comparingDouble(Placement::y).thenComparingDouble(Placement::x));
        }
        assertThat(end).isCloseTo(plan.length(), within(slack));
    }

    private static void checkFree(Offcut offcut, List<Placement> placed, double width, double length, double slack) {
        assertThat(Math.min(offcut.width(), offcut.length())).isGreaterThanOrEqualTo(RollPlanner.LEAST_OFFCUT - slack);
        assertThat(offcut.x() + offcut.width()).isLessThanOrEqualTo(width + slack);
        assertThat(offcut.y() + offcut.length()).isLessThanOrEqualTo(length + slack);
        Piece asPiece = new Piece("offcut", offcut.width(), offcut.length(), Turn.NONE);
        for (Placement p : placed) {
            checkApart(List.of(p, new Placement(asPiece, offcut.x(), offcut.y(), false)), slack);
        }
    }

    private static void checkOffcutsApart(List<Offcut> offcuts, double slack) {
        checkApart(
                offcuts.stream()
                        .map(o -> new Placement(
                                new Piece("offcut", o.width(), o.length(), Turn.NONE), o.x(), o.y(), false))
                        .toList(),
                slack);
        assertThat(offcuts)
                .isSortedAccordingTo(Comparator.comparingDouble(Offcut::area).reversed());
    }
}
