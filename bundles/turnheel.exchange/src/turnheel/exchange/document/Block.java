package turnheel.exchange.document;

import java.util.List;

import turnheel.engine.drawing.Picture;

/**
 * A block of a document. Texts are plain: whatever a person typed into them is no markup. A no-break blank, a no-break
 * hyphen or a word joiner in them stands where a line must not break; blanks are where it may.
 */
public sealed interface Block {

    /**
     * Heads what follows, up to the next heading of its level or above.
     *
     * @param level 1 under the title, then 2 and 3
     */
    record Heading(int level, String text) implements Block {
        public Heading {
            if (level < 1 || level > 3) {
                throw new IllegalArgumentException("a heading's level (%d) must be from 1 to 3".formatted(level));
            }
        }
    }

    /** A paragraph of a purpose, which a layout gives its look. */
    record Paragraph(Purpose purpose, String text) implements Block {
    }

    /** Short entries, one below the other, in any order or in this one. */
    record Entries(boolean numbered, List<String> texts) implements Block {
        public Entries {
            texts = List.copyOf(texts);
        }
    }

    /** Words and what they mean. */
    record Terms(List<Term> terms) implements Block {
        public Terms {
            terms = List.copyOf(terms);
        }
    }

    /** A word and what it means. */
    record Term(String word, String meaning) {
    }

    /**
     * A table. The first cell of each row is its heading, as each column has one.
     *
     * @param caption what it lists, in a line
     * @param head a heading for each column, the first for the column of headings
     */
    record Table(String caption, List<String> head, List<Row> rows) implements Block {
        public Table {
            head = List.copyOf(head);
            rows = List.copyOf(rows);
            for (Row row : rows) {
                if (row.cells().size() != head.size()) {
                    throw new IllegalArgumentException("a row has %d cells under %d headings: %s"
                            .formatted(row.cells().size(), head.size(), row.cells()));
                }
            }
        }
    }

    /** A row of a table. */
    record Row(List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /** A cell of a table. */
    sealed interface Cell {

        /** Words. */
        record Words(String text) implements Cell {
        }

        /** A number, or a number with its unit, lined up with those above and below. */
        record Figure(String text) implements Cell {
        }

        /** Nothing, since there is nothing to say. */
        record Nothing() implements Cell {
        }

        /** Room to write in by hand. */
        record Blank() implements Cell {
        }
    }

    /** A picture, with its title below and its description for those who cannot see it. */
    record Drawn(Picture picture) implements Block {
    }

    /** What follows starts on a page of its own, where there are pages. */
    record NewPage() implements Block {
    }
}
