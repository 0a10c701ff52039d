package turnheel.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import com.fasterxml.jackson.core.JsonGenerator;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import turnheel.cli.Table.Side;
import turnheel.engine.comparing.Comparison;
import turnheel.exchange.ErrataFiles;
import turnheel.exchange.ExportException;
import turnheel.exchange.errata.ErrataDocument;
import turnheel.exchange.errata.ErrataRow;
import turnheel.exchange.errata.InputRow;

/** {@code errata}: what reads otherwise in a newer version of a pattern. */
@Command(name = "errata")
final class ErrataVerb extends Verb {

    private static final String INDENT = "    ";

    @Mixin
    private PatternArgument before;

    @Parameters(index = "1", paramLabel = "NEW", descriptionKey = "new-file")
    private String after;

    @Mixin
    private StyleOption style;

    @Option(names = "--to", order = 3, paramLabel = "OUT")
    private String target;

    @Option(names = "--force", order = 4)
    private boolean force;

    ErrataVerb(Output output) {
        super(output);
    }

    @Override
    public Integer call() throws Refusal {
        Comparison comparison = Comparison.of(before.complete(), new PatternArgument(after).complete(), style.chosen());
        if (target != null) {
            write(comparison);
        }
        if (isJson()) {
            output().document(Json.document("turnheel-errata/1", json -> write(comparison, json)));
        } else if (target != null) {
            output().line(Words.EXPORT_WRITTEN.with(target));
        } else {
            print(comparison);
        }
        return Main.DONE;
    }

    private void write(Comparison comparison) throws Refusal {
        Path file = PatternArgument.path(target);
        PatternArgument.requireFree(List.of(file), force);
        try {
            ErrataFiles.write(comparison, file, force);
        } catch (ExportException failed) {
            throw new Refusal(failed.getMessage());
        }
    }

    private void print(Comparison comparison) {
        output().lines(ErrataDocument.notes(comparison));
        print(ErrataRow.of(comparison));
        List<InputRow> inputs = InputRow.of(comparison);
        if (!inputs.isEmpty()) {
            output().line("");
            Table table = new Table(Side.LEFT, Side.LEFT, Side.LEFT, Side.LEFT).row(Words.HEADING_KEY.text(),
                    Words.HEADING_SIZE.text(), Words.HEADING_WAS.text(), Words.HEADING_NOW.text());
            inputs.forEach(row -> table.row(row.key(), row.size(), row.before(), row.after()));
            output().lines(table.lines());
        }
    }

    /** Each line once, since it is long, and below it what reads otherwise in which size. */
    private void print(List<ErrataRow> errata) {
        Table table = new Table(Side.LEFT, Side.LEFT, Side.LEFT).row(Words.HEADING_SIZE.text(),
                Words.HEADING_READS.text(), Words.HEADING_SHOULD_READ.text());
        errata.forEach(row -> table.row(row.size(), row.readsOrNothing(), row.shouldReadOrNothing()));
        List<String> lines = table.lines();
        String place = "";
        for (int row = 0; row < errata.size(); row++) {
            if (!errata.get(row).place().equals(place)) {
                place = errata.get(row).place();
                output().line(place);
                output().line(INDENT + lines.getFirst());
            }
            output().line(INDENT + lines.get(row + 1));
        }
    }

    private static void write(Comparison comparison, JsonGenerator json) throws IOException {
        Json.texts(json, "added", comparison.sizes().added());
        Json.texts(json, "dropped", comparison.sizes().dropped());
        json.writeBooleanField("reordered", comparison.sizes().areReordered());
        json.writeArrayFieldStart("errata");
        for (ErrataRow row : ErrataRow.of(comparison)) {
            write(json, "chapter", row.chapter(), "line", row.line(), "size", row.size(), "reads", row.reads(),
                    "shouldRead", row.shouldRead());
        }
        json.writeEndArray();
        json.writeArrayFieldStart("inputs");
        for (InputRow row : InputRow.of(comparison)) {
            write(json, "key", row.key(), "label", row.what(), "size", row.size(), "was", row.before(), "now",
                    row.after());
        }
        json.writeEndArray();
    }

    private static void write(JsonGenerator json, String... membersAndTexts) throws IOException {
        json.writeStartObject();
        for (int at = 0; at < membersAndTexts.length; at += 2) {
            json.writeStringField(membersAndTexts[at], membersAndTexts[at + 1]);
        }
        json.writeEndObject();
    }
}
