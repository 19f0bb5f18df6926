/**
 * Generic, unbranded materials as data: one file a material, each figure with its source and whether it was seen printed
 * there, is recalled from memory, or is common practice.
 */
package laminate.library;
