/**
 * Which way to make a part: the same part by several processes, resins, schedules or files side by side.
 *
 * <p>{@link laminate.compare.SideBySide} is the way in. What is held equal is named by {@link laminate.compare.Basis}: at
 * the same reinforcement a process that presses out resin gives a thinner laminate, which is lighter and stronger for its
 * thickness and yet less stiff in bending, for stiffness goes with the cube of thickness; at the same bending stiffness or
 * the same weight the reinforcement or the core is changed until the two are alike, and then rounded to what can be laid.
 * Money is exact; a price that is missing leaves out what it would spoil.
 */
package laminate.compare;
