package laminate.print;

import java.util.ArrayList;
import java.util.List;

/**
 * A document for a reader, free of any format: what is said, in which order. Each renderer makes one format of it.
 *
 * @param blocks the blocks from top to bottom
 */
public record Report(List<Block> blocks) {

    /** A piece of a document. */
    public sealed interface Block permits Heading, Paragraph, Facts, Grid, Bullets {}

    /**
     * A heading.
     *
     * @param level 1 for a title, 2 and 3 below it
     * @param text the heading
     */
    public record Heading(int level, String text) implements Block {
        /**
         * Makes the heading a text of one line.
         *
         * @throws IllegalArgumentException if the level is not 1 to 3
         */
        public Heading {
            if (level < 1 || level > 3) {
                throw new IllegalArgumentException("a heading has level 1, 2 or 3, not " + level);
            }
            text = Lines.clean(text);
        }
    }

    /**
     * A paragraph.
     *
     * @param text its text
     */
    public record Paragraph(String text) implements Block {
        /** Makes the paragraph a text without line breaks of its own. */
        public Paragraph {
            text = Lines.clean(text);
        }
    }

    /**
     * A named value.
     *
     * @param name what it is
     * @param value the value with its unit
     */
    public record Fact(String name, String value) {
        /** Makes name and value texts of one line. */
        public Fact {
            name = Lines.clean(name);
            value = Lines.clean(value);
        }
    }

    /**
     * Named values, one below the other.
     *
     * @param facts the values
     */
    public record Facts(List<Fact> facts) implements Block {
        /** Copies the list. */
        public Facts {
            facts = List.copyOf(facts);
        }
    }

    /**
     * A table.
     *
     * @param table the table
     */
    public record Grid(Table table) implements Block {}

    /**
     * Points to mind, one below the other.
     *
     * @param texts the points
     */
    public record Bullets(List<String> texts) implements Block {
        /** Copies the list, and makes each point a text without line breaks. */
        public Bullets {
            List<String> clean = new ArrayList<>();
            for (String text : texts) {
                clean.add(Lines.clean(text));
            }
            texts = List.copyOf(clean);
        }
    }

    /** Copies the list. */
    public Report {
        blocks = List.copyOf(blocks);
    }

    /** Gathers the blocks of a document. */
    public static final class Builder {
        private final List<Block> blocks = new ArrayList<>();
        private List<Fact> facts = new ArrayList<>();

        /** Starts an empty document. */
        public Builder() {}

        /**
         * Adds a heading.
         *
         * @param level 1 for a title, 2 and 3 below it
         * @param text the heading
         * @return this
         */
        public Builder heading(int level, String text) {
            return add(new Heading(level, text));
        }

        /**
         * Adds a paragraph.
         *
         * @param text its text
         * @return this
         */
        public Builder paragraph(String text) {
            return add(new Paragraph(text));
        }

        /**
         * Adds a named value below the one before.
         *
         * @param name what it is
         * @param value the value with its unit
         * @return this
         */
        public Builder fact(String name, String value) {
            facts.add(new Fact(name, value));
            return this;
        }

        /**
         * Adds a table, unless it has no rows.
         *
         * @param table the table
         * @return this
         */
        public Builder grid(Table table) {
            return table.rows().isEmpty() ? this : add(new Grid(table));
        }

        /**
         * Adds points to mind, unless there are none.
         *
         * @param texts the points
         * @return this
         */
        public Builder bullets(List<String> texts) {
            return texts.isEmpty() ? this : add(new Bullets(texts));
        }

        /**
         * The document.
         *
         * @return the document
         */
        public Report build() {
            closeFacts();
            return new Report(blocks);
        }

        private Builder add(Block block) {
            closeFacts();
            blocks.add(block);
            return this;
        }

        private void closeFacts() {
            if (!facts.isEmpty()) {
                blocks.add(new Facts(facts));
                facts = new ArrayList<>();
            }
        }
    }
}
