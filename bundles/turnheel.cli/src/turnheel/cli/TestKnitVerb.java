package turnheel.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

import com.fasterxml.jackson.core.JsonGenerator;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import turnheel.engine.checks.Checks;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.exchange.ExportException;
import turnheel.exchange.TestKnitFiles;
import turnheel.exchange.testknit.Answer;
import turnheel.exchange.testknit.Comparison;
import turnheel.exchange.testknit.ResultProblem;
import turnheel.exchange.testknit.TestKnitResults;
import turnheel.exchange.testknit.TestKnitSheet;

/** {@code test-knit}: a sheet for test knitters, and their results against the predictions. */
@Command(name = "test-knit")
final class TestKnitVerb extends Verb {

    @Mixin
    private PatternArgument pattern;

    @Option(names = "--size", order = 1, paramLabel = "SIZE")
    private String size;

    @Option(names = "--results", order = 2, paramLabel = "RESULTS")
    private String results;

    @Mixin
    private DocumentTarget target;

    TestKnitVerb(Output output) {
        super(output);
    }

    @Override
    public Integer call() throws Refusal {
        if (results != null && size != null) {
            throw new Refusal(Words.TEST_KNIT_RESULTS_ALONE.text());
        }
        target.requireFree();
        Graded graded = size == null ? pattern.complete() : pattern.complete(List.of(size));
        if (results == null) {
            sheet(graded);
        } else {
            compared(graded);
        }
        return Verdict.noted(Checks.of(graded), output(), pattern.name());
    }

    private void sheet(Graded graded) throws Refusal {
        List<GradedSize> sizes = size == null ? graded.sizes()
                : List.of(graded.size(CellName.knownSize(graded.design(), size, pattern.name())));
        if (!target.isTable()) {
            target.put(TestKnitSheet.of(graded, sizes), output(), isJson());
            return;
        }
        try {
            TestKnitFiles.write(graded, sizes, target.file(), target.isForced());
        } catch (ExportException failed) {
            throw new Refusal(failed.getMessage());
        }
        target.written(output(), isJson());
    }

    private void compared(Graded graded) throws Refusal {
        TestKnitResults read = TestKnitFiles.read(PatternArgument.path(results), graded);
        List<ResultProblem> problems = read.problems();
        if (!problems.isEmpty()) {
            String first = problems.getFirst().sentence();
            throw new Refusal(problems.size() == 1 ? Words.TEST_KNIT_REFUSED.with(results, first)
                    : Words.TEST_KNIT_REFUSED_MORE.with(results, first, problems.size() - 1));
        }
        Comparison comparison = new Comparison(graded, read.answers());
        if (isJson() && target.name() == null) {
            output().document(Json.document("turnheel-test-knit/1", json -> write(comparison, json)));
        } else {
            target.put(comparison.document(), output(), isJson());
        }
    }

    private static void write(Comparison comparison, JsonGenerator json) throws IOException {
        Optional<Double> factor = comparison.yarnFactor();
        json.writeFieldName("yarnFactor");
        if (factor.isPresent()) {
            Json.number(json, factor.get());
        } else {
            json.writeNull();
        }
        json.writeArrayFieldStart("results");
        for (Answer answer : comparison.answers()) {
            json.writeStartObject();
            json.writeStringField("size", answer.size());
            json.writeStringField("key", answer.item().key());
            json.writeStringField("unit", answer.item().kind().unit());
            if (answer.item().predicted().isPresent()) {
                json.writeFieldName("predicted");
                Json.number(json, answer.item().predicted().getAsDouble());
            }
            if (answer.actual().isPresent()) {
                json.writeFieldName("actual");
                Json.number(json, answer.actual().getAsDouble());
            }
            if (!answer.words().isEmpty()) {
                json.writeStringField("words", answer.words());
            }
            if (!answer.remark().isEmpty()) {
                json.writeStringField("remark", answer.remark());
            }
            Optional<String> meaning = comparison.meaning(answer);
            if (meaning.isPresent()) {
                json.writeStringField("means", meaning.get());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
