package laminate.order.cut;

/**
 * Lays pieces one by one: at the lowest place the piece that fits best, of equally good ones the first in order
 * (best fit: Burke, Kendall and Whitwell 2004, see {@link Skyline}). A place that no piece fits is given up.
 */
final class Filler {
    private static final int NONE = -1;

    /** Finding and leaving a place costs about as much as looking at so many pieces. */
    private static final int STEPS_OF_PLACE = 20;

    private final Sizes sizes;
    private final Stock stock;
    private final Skyline skyline;
    private final Layout layout;

    /** The pieces not yet laid, as a chain; the entry after the last piece's is the head. */
    private final int[] next;

    private final int head;

    private long limit;
    private long steps;
    private int beforeBest;
    private boolean bestTurned;

    Filler(Sizes sizes, Stock stock) {
        this.sizes = sizes;
        this.stock = stock;
        skyline = new Skyline(stock.width());
        layout = Layout.of(sizes.count());
        head = sizes.count();
        next = new int[head + 1];
    }

    /** The effort so far: how many times a piece was looked at, and as much again for finding places. */
    long steps() {
        return steps;
    }

    /** Lays all pieces; the layout is overwritten by the next call. */
    Layout fill(Order order) {
        chain(order);
        layout.clear();
        begin(order);
        while (next[head] != NONE) {
            int level = skyline.lowest();
            int item = choose(level, order);
            if (item != NONE) {
                lay(item, level, order.side());
            } else if (!skyline.fillUp(level)) {
                layout.begin(stock.across() ? layout.length() : layout.parts() * stock.length());
                begin(order);
            }
        }
        return layout;
    }

    private void chain(Order order) {
        int last = head;
        for (int place = 0; place < order.count(); place++) {
            next[last] = order.item(place);
            last = next[last];
        }
        next[last] = NONE;
    }

    /** Begins a roll, sheet or pull. */
    private void begin(Order order) {
        skyline.clear();
        limit = stock.across() ? lengthOfPull(next[head], order) : stock.length();
    }

    private long lengthOfPull(int item, Order order) {
        boolean turn = sizes.turns(item) && order.turned(item);
        return sizes.along(item, stock.fits(sizes, item, turn) ? turn : !turn);
    }

    private int choose(int level, Order order) {
        long room = skyline.room(level);
        long left = skyline.riseLeft(level);
        long right = skyline.riseRight(level);
        long above = limit - skyline.height(level);
        Fit fit = order.fit();
        int best = NONE;
        int bestScore = NONE;
        int before = head;
        steps += STEPS_OF_PLACE;
        for (int item = next[head]; item != NONE; item = next[item]) {
            steps++;
            long across = sizes.across(item, false);
            long along = sizes.along(item, false);
            int score = across <= room && along <= above ? fit.score(across, along, room, left, right) : NONE;
            boolean turn = false;
            if (sizes.turns(item) && along <= room && across <= above) {
                int turned = fit.score(along, across, room, left, right);
                turn = turned > score || (turned == score && order.turned(item));
                score = Math.max(score, turned);
            }
            if (score > bestScore) {
                best = item;
                bestScore = score;
                bestTurned = turn;
                beforeBest = before;
            }
            before = item;
        }
        return best;
    }

    private void lay(int item, int level, Side side) {
        long across = sizes.across(item, bestTurned);
        long along = sizes.along(item, bestTurned);
        boolean left = side.left(along, skyline.riseLeft(level), skyline.riseRight(level));
        long x = left ? skyline.start(level) : skyline.start(level) + skyline.room(level) - across;
        layout.put(item, x, skyline.height(level), bestTurned, along);
        skyline.lay(level, across, along, left);
        next[beforeBest] = next[item];
    }
}
