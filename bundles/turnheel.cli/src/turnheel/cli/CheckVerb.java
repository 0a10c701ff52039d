package turnheel.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import com.fasterxml.jackson.core.JsonGenerator;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import turnheel.cli.Table.Side;
import turnheel.engine.checks.Checks;
import turnheel.engine.grading.Graded;
import turnheel.engine.knitting.Manuscript;
import turnheel.engine.query.Place;
import turnheel.engine.query.Query;
import turnheel.engine.query.Sentences;
import turnheel.engine.query.Severity;
import turnheel.exchange.ManuscriptFiles;

/** {@code check}: what a person must look at. */
@Command(name = "check")
final class CheckVerb extends Verb {

    @Mixin
    private PatternArgument pattern;

    @Option(names = "--list", paramLabel = "QUERIES.csv")
    private String list;

    CheckVerb(Output output) {
        super(output);
    }

    @Override
    public Integer call() throws Refusal {
        if (ManuscriptFiles.isName(pattern.name())) {
            return manuscript();
        }
        if (list != null) {
            throw new Refusal(Words.CHECK_LIST_OF_PATTERN.text());
        }
        Graded graded = pattern.graded();
        List<Query> queries = Checks.of(graded);
        RelaxationsText relaxations = RelaxationsText.of(graded);
        if (isJson()) {
            output().document(Json.document("turnheel-queries/1", json -> {
                write(queries, json);
                relaxations.write(json);
            }));
        } else if (queries.isEmpty()) {
            output().line(Words.CHECK_CLEAN.text());
        } else {
            output().lines(table(queries));
            long errors = Verdict.errors(queries);
            output().line("");
            output().line(Words.CHECK_SUMMARY.with(errors, queries.size() - errors));
            output().lines(relaxations.lines());
        }
        return Verdict.of(queries);
    }

    /** Knits a manuscript again. */
    private int manuscript() throws Refusal {
        try {
            String text = ManuscriptFiles.read(PatternArgument.path(pattern.name()));
            List<Query> queries = Manuscript.read(text).knit().queries();
            if (list != null) {
                Path file = PatternArgument.path(list);
                ManuscriptFiles.write(ManuscriptFiles.list(file).next(text, queries), file);
            }
            report(text, queries);
            return Verdict.of(queries);
        } catch (IOException unreadable) {
            throw new Refusal(unreadable.getMessage());
        }
    }

    private void report(String text, List<Query> queries) {
        if (isJson()) {
            output().document(Json.document("turnheel-queries/1", json -> write(queries, json)));
        } else if (queries.isEmpty()) {
            output().line(Words.CHECK_CLEAN.text());
        } else {
            output().painted(new ManuscriptReport(pattern.name(), Output.quotable(text), Paint.ofThisProcess())
                    .lines(queries));
            long errors = Verdict.errors(queries);
            output().line(Words.CHECK_SUMMARY.with(errors, queries.size() - errors));
        }
    }

    private static List<String> table(List<Query> queries) {
        Table table = new Table(Side.LEFT, Side.LEFT, Side.LEFT, Side.LEFT).row(Words.HEADING_SEVERITY.text(),
                Words.HEADING_CHECK.text(), Words.HEADING_SIZES.text(), Words.HEADING_MESSAGE.text());
        for (Query query : queries) {
            table.row(word(query.severity()), query.check().id(), String.join(", ", query.sizes()),
                    Sentences.of(query));
        }
        return table.lines();
    }

    private static String word(Severity severity) {
        return severity.name().toLowerCase(Locale.ROOT);
    }

    private static void write(List<Query> queries, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("queries");
        for (Query query : queries) {
            json.writeStartObject();
            json.writeStringField("id", query.check().id());
            json.writeStringField("severity", word(query.severity()));
            switch (query.place()) {
                case Place.Row(var key) -> json.writeStringField("key", key.name());
                case Place.Text(int line, int from, int to) -> {
                    json.writeNumberField("line", line);
                    json.writeNumberField("column", from);
                    json.writeNumberField("endColumn", to);
                }
            }
            Json.texts(json, "sizes", query.sizes());
            json.writeStringField("expected", query.expected());
            json.writeStringField("found", query.found());
            json.writeStringField("message", Sentences.of(query));
            if (!query.correction().isEmpty()) {
                json.writeStringField("correction", query.correction());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
