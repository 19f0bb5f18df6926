/**
 * Input files: YAML text to domain values, with file, line and column for every complaint.
 *
 * <p>A file passes three rooms. {@code SourceFile} turns its bytes into text; {@code YamlTree} turns the text into a tree
 * of nodes with their places, knowing nothing of laminates; the readers turn the tree into domain values, put together
 * from {@code Reading}s. What is wrong is collected on the way and thrown at the end as one
 * {@link laminate.file.InputException}, so that a user mends a file in one round.
 *
 * <p>Data-binding is not used, as it reports a mistyped key as a missing value elsewhere, reads {@code 010} as eight and
 * takes an alias for text.
 */
package laminate.file;
