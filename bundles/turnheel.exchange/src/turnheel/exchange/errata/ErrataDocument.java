package turnheel.exchange.errata;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import turnheel.engine.comparing.Comparison;
import turnheel.engine.comparing.SizePairs;
import turnheel.engine.design.Design;
import turnheel.exchange.document.Block;
import turnheel.exchange.document.Document;
import turnheel.exchange.document.Imprint;
import turnheel.exchange.document.Purpose;
import turnheel.exchange.imprint.ContentHash;

/** The errata sheet: what reads otherwise, then, for the designer, what was changed. */
public final class ErrataDocument {

    /** So many digits tell two states of one pattern apart. */
    private static final int SHORT_HASH = 12;

    private ErrataDocument() {
    }

    /** The sheet. Where nothing reads otherwise, it says so. */
    public static Document of(Comparison comparison) {
        Design before = comparison.before().design();
        Design after = comparison.after().design();
        List<Block> blocks = new ArrayList<>();
        notes(comparison).forEach(note -> blocks.add(new Block.Paragraph(Purpose.NOTE, note)));
        List<ErrataRow> errata = byLineAndSize(ErrataRow.of(comparison));
        if (!errata.isEmpty()) {
            blocks.add(new Block.Table(Words.text("errata.caption"), List.of(Words.text("heading.place"),
                    Words.text("heading.size"), Words.text("heading.reads"), Words.text("heading.shouldRead")),
                    errata.stream().map(row -> row(row.place(), row.size(), row.readsOrNothing(),
                            row.shouldReadOrNothing())).toList()));
        }
        blocks.add(new Block.Heading(1, Words.text("inputs")));
        List<InputRow> inputs = InputRow.of(comparison);
        if (inputs.isEmpty()) {
            blocks.add(new Block.Paragraph(Purpose.BODY, Words.text("inputs.none")));
        } else {
            blocks.add(new Block.Table(Words.text("inputs.caption"), List.of(Words.text("heading.what"),
                    Words.text("heading.size"), Words.text("heading.was"), Words.text("heading.is")),
                    inputs.stream().map(row -> row(row.what(), row.size(), row.before(), row.after())).toList()));
        }
        return new Document(Words.text("title", before.title().isBlank() ? Words.text("untitled") : before.title()),
                Words.text("subject", hash(before), hash(after)), Imprint.of(after), blocks);
    }

    /** What no row says: that nothing differs, and what became of the sizes. */
    public static List<String> notes(Comparison comparison) {
        List<String> notes = new ArrayList<>();
        SizePairs sizes = comparison.sizes();
        if (comparison.readsTheSame()) {
            notes.add(Words.text("nothing"));
        }
        if (!sizes.added().isEmpty()) {
            notes.add(Words.text("sizes.added", String.join(", ", sizes.added())));
        }
        if (!sizes.dropped().isEmpty()) {
            notes.add(Words.text("sizes.dropped", String.join(", ", sizes.dropped())));
        }
        if (sizes.areReordered()) {
            notes.add(Words.text("sizes.reordered"));
        }
        return notes;
    }

    /** All that reads otherwise in one line and size in one row, since the line is long and is printed once so. */
    private static List<ErrataRow> byLineAndSize(List<ErrataRow> errata) {
        Map<List<String>, ErrataRow> rows = new LinkedHashMap<>();
        for (ErrataRow row : errata) {
            rows.merge(List.of(row.place(), row.size()), row, (one, other) -> new ErrataRow(one.chapter(), one.line(),
                    one.size(), Words.text("several", one.readsOrNothing(), other.readsOrNothing()),
                    Words.text("several", one.shouldReadOrNothing(), other.shouldReadOrNothing())));
        }
        return List.copyOf(rows.values());
    }

    private static String hash(Design design) {
        return ContentHash.of(design).substring(0, SHORT_HASH);
    }

    private static Block.Row row(String... texts) {
        return new Block.Row(List.<Block.Cell>copyOf(List.of(texts).stream().map(Block.Cell.Words::new).toList()));
    }
}
