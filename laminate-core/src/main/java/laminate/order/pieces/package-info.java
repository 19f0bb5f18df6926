/**
 * Pieces to cut for parts, layer by layer, and how they are laid on the rolls and sheets that are sold.
 *
 * <p><b>Conventions.</b> A zone's outline is the rectangle about it, unrolled flat: x along its length, y along its width.
 * The warp of a fabric lies at the layer's angle from x towards y. A piece is the rectangle about what a layer needs: its
 * width across the roll, its length along the warp. Where a layer is wider than the roll it is laid in strips that lap;
 * cores butt. Lengths in metres, angles in degrees.
 */
package laminate.order.pieces;
