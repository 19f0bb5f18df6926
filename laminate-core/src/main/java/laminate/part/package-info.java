/**
 * What is to be moulded: a part, its zones, their coatings and layers in the order they are laid, mould face first.
 *
 * <p>Everything a layer needs is in it: the process, resin and dose that a part file states once for the part are already
 * resolved. The area of a zone is that of the finished part; zones do not overlap.
 *
 * <p>What it has to carry is a part of it too: load cases of a zone's laminate, panels and beams that are pieces of a zone,
 * and limits, of which the nearest wins.
 */
package laminate.part;
