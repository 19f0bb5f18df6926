package laminate.check;

import laminate.part.PanelPlan;

/** The places of a panel whose moments are of interest. */
public enum PanelSpot {
    /** The middle. */
    CENTRE(0.5, 0.5),
    /** The middle of the edge x = 0. */
    X_START(0, 0.5),
    /** The middle of the edge x = length. */
    X_END(1, 0.5),
    /** The middle of the edge y = 0. */
    Y_START(0.5, 0),
    /** The middle of the edge y = width. */
    Y_END(0.5, 1);

    private final double alongLength;
    private final double alongWidth;

    PanelSpot(double alongLength, double alongWidth) {
        this.alongLength = alongLength;
        this.alongWidth = alongWidth;
    }

    double x(PanelPlan panel) {
        return alongLength * panel.length();
    }

    double y(PanelPlan panel) {
        return alongWidth * panel.width();
    }
}
