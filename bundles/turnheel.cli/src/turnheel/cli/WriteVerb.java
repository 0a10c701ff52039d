package turnheel.cli;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;

import com.fasterxml.jackson.core.JsonGenerator;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import turnheel.engine.checks.Checks;
import turnheel.engine.design.Spelling;
import turnheel.engine.grading.Graded;
import turnheel.engine.query.Query;
import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.HouseStyles;
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

    /** A file of a style is told from a name by its ending. */
    private static final String STYLE_ENDING = ".properties";

    @Mixin
    private PatternArgument pattern;

    @Option(names = "--size", order = 1, paramLabel = "SIZE")
    private String label;

    @Option(names = "--style", order = 2, paramLabel = "STYLE")
    private String style;

    @Option(names = "--to", order = 3, paramLabel = "OUT")
    private String target;

    @Option(names = "--force", order = 4)
    private boolean force;

    WriteVerb(Output output) {
        super(output);
    }

    @Override
    public Integer call() throws Refusal {
        HouseStyle chosen = style();
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

    private HouseStyle style() throws Refusal {
        if (style == null) {
            return HouseStyles.usual();
        }
        if (HouseStyles.SHIPPED.contains(style)) {
            return HouseStyles.shipped(style);
        }
        if (!style.toLowerCase(Locale.ROOT).endsWith(STYLE_ENDING)) {
            throw new Refusal(UsageErrors.didYouMean(
                    Words.STYLE_UNKNOWN.with(style, String.join(", ", HouseStyles.SHIPPED), STYLE_ENDING),
                    Spelling.suggestion(style, HouseStyles.SHIPPED)));
        }
        try {
            return HouseStyles.read(style, entries(PatternArgument.path(style)));
        } catch (IllegalArgumentException refused) {
            throw new Refusal(Words.STYLE_REFUSED.with(style, refused.getMessage()));
        }
    }

    /** @throws IllegalArgumentException when a Unicode escape in it is malformed */
    private Map<String, String> entries(Path file) throws Refusal {
        if (Files.isDirectory(file)) {
            throw new Refusal(Words.IS_A_FOLDER.with(style));
        }
        if (!Files.exists(file)) {
            throw new Refusal(Words.NO_SUCH_FILE.with(style));
        }
        Properties properties = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            properties.load(reader);
        } catch (MalformedInputException notUtf8) {
            throw new Refusal(Words.STYLE_NOT_UTF8.with(style));
        } catch (IOException failed) {
            throw new Refusal(Words.STYLE_REFUSED.with(style, failed.getMessage()));
        }
        Map<String, String> entries = new TreeMap<>();
        properties.stringPropertyNames().forEach(key -> entries.put(key, properties.getProperty(key)));
        return entries;
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
