package laminate.theory.panel;

/** Finds the point of a panel that moves most: on a grid first, then by halving the step about the best point. */
final class DeflectionPeak {
    private static final int GRID = 16;
    private static final int HALVINGS = 12;

    private final PanelState state;
    private final double length;
    private final double width;
    private double x;
    private double y;
    private double most = -1;

    DeflectionPeak(PanelState state) {
        this.state = state;
        length = state.basis().panel().length();
        width = state.basis().panel().width();
        onGrid();
        double step = 1.0 / GRID;
        for (int i = 0; i < HALVINGS; i++) {
            step /= 2;
            around(step * length, step * width);
        }
    }

    double[] place() {
        return new double[] {x, y};
    }

    /** From the middle outwards, so that of equal points the middle is taken. */
    private void onGrid() {
        double[][] byX = lines(state.basis().alongX());
        double[][] byY = lines(state.basis().alongY());
        offer(length / 2, width / 2, state.deflection(length / 2, width / 2));
        for (int i = 0; i <= GRID; i++) {
            for (int j = 0; j <= GRID; j++) {
                offer(length * i / GRID, width * j / GRID, deflection(byX[i], byY[j]));
            }
        }
    }

    private static double[][] lines(Line shapes) {
        double[][] lines = new double[GRID + 1][];
        for (int i = 0; i <= GRID; i++) {
            lines[i] = shapes.at(shapes.length() * i / GRID)[0];
        }
        return lines;
    }

    private double deflection(double[] alongX, double[] alongY) {
        double w = 0;
        for (int i = 0; i < state.factors().length; i++) {
            Basis.Unknown u = state.basis().unknown(i);
            if (u.field() == Field.W) {
                w += state.factors()[i] * alongX[u.x()] * alongY[u.y()];
            }
        }
        return w;
    }

    private void around(double stepX, double stepY) {
        double centreX = x;
        double centreY = y;
        for (int i = -1; i <= 1; i++) {
            for (int j = -1; j <= 1; j++) {
                double nearX = Math.min(length, Math.max(0, centreX + i * stepX));
                double nearY = Math.min(width, Math.max(0, centreY + j * stepY));
                offer(nearX, nearY, state.deflection(nearX, nearY));
            }
        }
    }

    /** Rounding must not move the place off the middle. */
    private void offer(double atX, double atY, double deflection) {
        if (Math.abs(deflection) > most * (1 + 1e-12)) {
            x = atX;
            y = atY;
            most = Math.abs(deflection);
        }
    }
}
