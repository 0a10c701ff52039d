package turnheel.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

import com.fasterxml.jackson.core.JsonGenerator;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

import turnheel.cli.Table.Side;
import turnheel.engine.checks.Checks;
import turnheel.engine.grading.Graded;
import turnheel.engine.query.Query;
import turnheel.engine.query.Sentences;
import turnheel.engine.query.Severity;

/** {@code check}: what a person must look at. */
@Command(name = "check")
final class CheckVerb extends Verb {

    @Mixin
    private PatternArgument pattern;

    CheckVerb(Output output) {
        super(output);
    }

    @Override
    public Integer call() throws Refusal {
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
            json.writeStringField("key", query.key().name());
            Json.texts(json, "sizes", query.sizes());
            json.writeStringField("expected", query.expected());
            json.writeStringField("found", query.found());
            json.writeStringField("message", Sentences.of(query));
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
