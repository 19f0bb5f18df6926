/**
 * Input files: YAML text to domain values, with file, line and column for every complaint.
 *
 * <p>A file passes three rooms. {@code SourceFile} turns its bytes into text; {@code YamlTree} turns the text into a tree
 * of nodes with their places, knowing nothing of laminates; the readers turn the tree into domain values, put together
 * from {@code Reading}s. What is wrong is collected on the way and thrown at the end as one
 * {@link laminate.file.InputException}, so that a user mends a file in one round.
 *
 * <p>A part file gives a {@link laminate.file.Job}, a project file a {@link laminate.file.Project}: several parts of one
 * yard with the moulds and plugs that they share. With the library alone, ten sets of a project are estimated and priced by
 *
 * <pre>{@code
 * Project lockers = ProjectFile.read(Path.of("lockers.yaml"), new MaterialLibrary(), Overrides.NONE);
 * double seconds = 0;
 * for (Job job : lockers.jobs(10)) { // plugs, then moulds, then mouldings
 *     seconds += job.estimate().time();
 * }
 * SetQuote sets = lockers.quote(List.of(10));
 * Money lids = sets.quotes().get(0).offers().get(0).price().net(); // the first moulding, in ten sets
 * Money mould = sets.batches().get(0).tools().get(0).borne(); // what the mouldings bear of their mould
 * }</pre>
 *
 * <p>Data-binding is not used, as it reports a mistyped key as a missing value elsewhere, reads {@code 010} as eight and
 * takes an alias for text.
 */
package laminate.file;
