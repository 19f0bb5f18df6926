package laminate.theory.panel;

/** What a panel's state is made of: displacements of the mid-plane and rotations of the upright. */
enum Field {
    /** Displacement along x. */
    U(true, false),
    /** Displacement along y. */
    V(false, true),
    /** Deflection. */
    W(false, false),
    /** Rotation, u(z) = u + z φx. */
    PHI_X(true, false),
    /** Rotation, v(z) = v + z φy. */
    PHI_Y(false, true);

    private final boolean alongX;
    private final boolean alongY;

    Field(boolean alongX, boolean alongY) {
        this.alongX = alongX;
        this.alongY = alongY;
    }

    /** 1 if the field itself changes sign when the panel is mirrored along x, else 0. */
    int flipsAlongX() {
        return alongX ? 1 : 0;
    }

    /** 1 if the field itself changes sign when the panel is mirrored along y, else 0. */
    int flipsAlongY() {
        return alongY ? 1 : 0;
    }

    boolean isInPlane() {
        return this == U || this == V;
    }

    /** Whether an edge holds the field; across tells that the edge is one where the field points across it. */
    boolean heldBy(Edge edge, boolean edgeAcrossX, InPlane inPlane) {
        boolean normal = edgeAcrossX ? alongX : alongY;
        return switch (this) {
            case W -> edge.holdsDeflection();
            case PHI_X, PHI_Y -> normal ? edge.holdsTurning() : edge.holdsTwist();
            case U, V -> inPlane == InPlane.HELD ? edge.holdsDeflection() : !normal && edge.holdsTwist();
        };
    }
}
