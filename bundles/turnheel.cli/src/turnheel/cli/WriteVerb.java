package turnheel.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import com.fasterxml.jackson.core.JsonGenerator;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import turnheel.engine.checks.Checks;
import turnheel.engine.grading.Graded;
import turnheel.engine.query.Query;
import turnheel.engine.wording.HouseStyle;
import turnheel.engine.writing.Manuscripts;
import turnheel.engine.writing.Paragraph;
import turnheel.engine.writing.PatternText;
import turnheel.engine.writing.Piece;
import turnheel.engine.writing.Renderings;
import turnheel.exchange.ExportException;
import turnheel.exchange.Exports;

/** {@code write}: the written pattern. */
@Command(name = "write")
final class WriteVerb extends Verb {

    @Mixin
    private PatternArgument pattern;

    @Option(names = "--size", order = 1, paramLabel = "SIZE")
    private String label;

    @Mixin
    private StyleOption style;

    @Option(names = "--to", order = 3, paramLabel = "OUT")
    private String target;

    @Option(names = "--force", order = 4)
    private boolean force;

    WriteVerb(Output output) {
        super(output);
    }

    @Override
    public Integer call() throws Refusal {
        HouseStyle chosen = style.chosen();
        List<String> sizes = label == null ? List.of() : List.of(label);
        Graded graded = sizes.isEmpty() ? pattern.complete() : pattern.complete(sizes);
        PatternText text = Manuscripts.write(graded, chosen);
        if (label != null) {
            text = text.onlySize(CellName.knownSize(graded.design(), label, pattern.name()));
        }
        if (target != null) {
            writeFile(text);
        }
        print(text);
        List<Query> queries = Checks.of(graded).stream()
                .filter(query -> sizes.isEmpty() || query.sizes().contains(label)).toList();
        return Verdict.noted(queries, output(), pattern.name());
    }

    private void print(PatternText text) {
        if (isJson()) {
            output().document(Json.document("turnheel-text/1", json -> write(text, json)));
        } else if (target != null) {
            output().line(Words.EXPORT_WRITTEN.with(target));
        } else {
            output().lines(Renderings.plain(text).lines().toList());
        }
    }

    private void writeFile(PatternText text) throws Refusal {
        Path file = PatternArgument.path(target);
        String name = file.toString().toLowerCase(Locale.ROOT);
        if (!name.endsWith(".txt") && !name.endsWith(".md")) {
            throw new Refusal(Words.NOT_A_TEXT_NAME.with(target));
        }
        if (!force && Files.exists(file) && !Files.isDirectory(file)) {
            throw new Refusal(Words.EXISTS.with(target));
        }
        try {
            Exports.writeText(name.endsWith(".md") ? Renderings.markdown(text) : Renderings.plain(text), file, force);
        } catch (ExportException failed) {
            throw new Refusal(failed.getMessage());
        }
    }

    private static void write(PatternText text, JsonGenerator json) throws IOException {
        json.writeStringField("style", text.style().name());
        Json.texts(json, "sizes", text.sizes());
        json.writeArrayFieldStart("paragraphs");
        for (Paragraph paragraph : text.paragraphs()) {
            json.writeStartObject();
            json.writeStringField("role", paragraph.role().word());
            json.writeStringField("text", text.text(paragraph));
            json.writeArrayFieldStart("pieces");
            for (Piece piece : paragraph.pieces()) {
                write(piece, json);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void write(Piece piece, JsonGenerator json) throws IOException {
        json.writeStartObject();
        switch (piece) {
            case Piece.Words(String words) -> json.writeStringField("words", words);
            case Piece.Values(List<Optional<String>> each) -> {
                json.writeArrayFieldStart("values");
                for (Optional<String> value : each) {
                    json.writeString(value.orElse(null));
                }
                json.writeEndArray();
            }
        }
        json.writeEndObject();
    }
}
