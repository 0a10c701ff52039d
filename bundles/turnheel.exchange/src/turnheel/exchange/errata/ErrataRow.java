package turnheel.exchange.errata;

import java.util.List;

import turnheel.engine.comparing.Comparison;
import turnheel.engine.comparing.Erratum;

/**
 * An erratum in words.
 *
 * @param chapter the heading that it stands under; empty before the first
 * @param line as it is printed
 * @param size the label of the only size that it concerns, or the word for all
 * @param reads what is printed, a value with the words around it; empty where a line is missing
 * @param shouldRead the same corrected; empty where a line must go
 */
public record ErrataRow(String chapter, String line, String size, String reads, String shouldRead) {

    /** All of them, in the order of print. */
    public static List<ErrataRow> of(Comparison comparison) {
        return comparison.errata().stream().map(ErrataRow::of).toList();
    }

    private static ErrataRow of(Erratum erratum) {
        String chapter = erratum.place().chapter();
        return switch (erratum) {
            case Erratum.Value value -> new ErrataRow(chapter, value.place().line(), value.size(),
                    value.lead() + value.reads() + value.trail(), value.lead() + value.shouldRead() + value.trail());
            case Erratum.Passage passage when passage.reads().isEmpty() -> new ErrataRow(chapter,
                    Words.text("after", passage.place().line()), Words.text("all"), "",
                    passage.shouldRead().orElseThrow());
            case Erratum.Passage passage -> new ErrataRow(chapter, passage.place().line(), Words.text("all"),
                    passage.reads().orElseThrow(), passage.shouldRead().orElse(""));
        };
    }

    /** Chapter and line in one. */
    public String place() {
        return chapter.isEmpty() || chapter.equals(line) ? line : Words.text("place", chapter, line);
    }

    /** What is printed, or that nothing is. */
    public String readsOrNothing() {
        return reads.isEmpty() ? Words.text("missing") : reads;
    }

    /** What should be printed, or that nothing should. */
    public String shouldReadOrNothing() {
        return shouldRead.isEmpty() ? Words.text("leaveOut") : shouldRead;
    }
}
