package turnheel.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

import com.fasterxml.jackson.core.JsonGenerator;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import turnheel.cli.Table.Side;
import turnheel.engine.query.Severity;
import turnheel.exchange.Batch;
import turnheel.exchange.BatchOutcome;
import turnheel.exchange.BatchPlan;
import turnheel.exchange.Edition;
import turnheel.exchange.ExportException;
import turnheel.exchange.ExportFormat;
import turnheel.exchange.ExportFormat.Kind;
import turnheel.exchange.drawing.Drawn;
import turnheel.model.PatternFiles;

/** {@code batch}: every pattern below a folder, exported in several formats. */
@Command(name = "batch")
final class BatchVerb extends Verb {

    @Parameters(index = "0", paramLabel = "FOLDER", descriptionKey = "folder")
    private String folder;

    @Option(names = "--to", order = 1, paramLabel = "FOLDER", required = true)
    private String target;

    @Option(names = "--formats", order = 1, paramLabel = "FORMATS", required = true)
    private String formats;

    @Option(names = "--part", order = 2, paramLabel = "PART")
    private String part;

    @Option(names = "--size", order = 2, paramLabel = "SIZE")
    private String size;

    @Mixin
    private StyleOption style;

    @Option(names = "--fail-on", order = 3, paramLabel = "LEVEL")
    private String failOn = "error";

    @Option(names = "--force", order = 4)
    private boolean force;

    BatchVerb(Output output) {
        super(output);
    }

    @Override
    public Integer call() throws Refusal {
        List<ExportFormat> chosen = formats();
        Edition edition = edition(chosen);
        Severity level = Choice.of("--fail-on", failOn, Severity.class);
        BatchPlan plan = plan(chosen);
        boolean onlyOneSize = size != null && chosen.stream().noneMatch(format -> format.kind() == Kind.WHOLE);
        List<BatchOutcome> outcomes = run(plan, edition, onlyOneSize);
        if (isJson()) {
            output().document(Json.document("turnheel-batch/1", json -> write(outcomes, chosen, json)));
        } else {
            output().lines(table(outcomes));
            output().line("");
            output().line(Words.BATCH_SUMMARY.with(clean(outcomes), withQueries(outcomes), failed(outcomes)));
        }
        return verdict(outcomes, level);
    }

    private List<ExportFormat> formats() throws Refusal {
        List<String> known = Arrays.stream(ExportFormat.values()).map(BatchVerb::word).toList();
        Set<ExportFormat> chosen = new LinkedHashSet<>();
        for (String word : formats.split(",", -1)) {
            String plain = word.strip();
            chosen.add(ExportFormat.values()[Choice.position("--formats",
                    plain.startsWith(".") ? plain.substring(1) : plain, known)]);
        }
        return List.copyOf(chosen);
    }

    private static String word(ExportFormat format) {
        return format.ending().substring(1);
    }

    /** What is exported. An option that none of the formats has a use for would promise what is not done. */
    private Edition edition(List<ExportFormat> chosen) throws Refusal {
        requireUse("--part", part != null, chosen, ExportFormat::canDraw);
        if (style.given().isPresent()) {
            requireUse(style.given().get(), true, chosen, format -> format.kind() == Kind.WRITTEN);
        }
        requireUse("--size", size != null, chosen, format -> format.kind() != Kind.WHOLE);
        Optional<Drawn.What> only = part == null ? Optional.empty()
                : Optional.of(Choice.of("--part", part, Drawn.What.class));
        return new Edition(only, Optional.ofNullable(size), style.chosen());
    }

    private void requireUse(String option, boolean given, List<ExportFormat> chosen, Predicate<ExportFormat> taking)
            throws Refusal {
        if (given && chosen.stream().noneMatch(taking)) {
            throw new Refusal(ExportVerb.refused(option, formats, taking));
        }
    }

    private BatchPlan plan(List<ExportFormat> chosen) throws Refusal {
        try {
            BatchPlan plan = BatchPlan.of(PatternArgument.path(folder), "." + PatternFiles.EXTENSION,
                    PatternArgument.path(target), chosen);
            List<Path> existing = force ? List.of() : plan.existing();
            if (!existing.isEmpty()) {
                throw new Refusal(Words.BATCH_EXISTS.with(plan.target().resolve(existing.getFirst()), existing.size()));
            }
            return plan;
        } catch (ExportException refused) {
            throw new Refusal(refused.getMessage());
        }
    }

    private List<BatchOutcome> run(BatchPlan plan, Edition edition, boolean onlyOneSize) {
        BatchWatch watch = BatchWatch.start(output());
        try {
            return Batch.run(plan, file -> {
                try {
                    return PatternArgument.complete(file, onlyOneSize ? edition.size() : Optional.empty());
                } catch (Refusal refused) {
                    throw new IOException(refused.getMessage(), refused);
                }
            }, edition, force, Batch.usualWorkers(), watch);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("nobody interrupts a command", interrupted);
        } finally {
            watch.end();
        }
    }

    private static long failed(List<BatchOutcome> outcomes) {
        return outcomes.stream().filter(outcome -> outcome.state() != BatchOutcome.State.DONE).count();
    }

    private static long withQueries(List<BatchOutcome> outcomes) {
        return outcomes.stream().filter(outcome -> state(outcome) == Words.BATCH_QUERIES).count();
    }

    private static long clean(List<BatchOutcome> outcomes) {
        return outcomes.stream().filter(outcome -> state(outcome) == Words.BATCH_DONE).count();
    }

    private static Words state(BatchOutcome outcome) {
        return switch (outcome.state()) {
            case DONE -> outcome.errors() + outcome.warnings() == 0 ? Words.BATCH_DONE : Words.BATCH_QUERIES;
            case FAILED -> Words.BATCH_FAILED;
            case CANCELLED -> Words.BATCH_CANCELLED;
        };
    }

    private static List<String> table(List<BatchOutcome> outcomes) {
        Table table = new Table(Side.LEFT, Side.LEFT, Side.RIGHT, Side.RIGHT, Side.LEFT).row(Words.HEADING_PATTERN.text(),
                Words.HEADING_STATE.text(), Words.HEADING_ERRORS.text(), Words.HEADING_WARNINGS.text(),
                Words.HEADING_FIRST.text());
        for (BatchOutcome outcome : outcomes) {
            table.row(outcome.source().toString(), state(outcome).text(), Integer.toString(outcome.errors()),
                    Integer.toString(outcome.warnings()), outcome.message());
        }
        return table.lines();
    }

    /** A file that failed is input that could not be read, or an output that could not be written, though others were. */
    private int verdict(List<BatchOutcome> outcomes, Severity level) {
        long failed = failed(outcomes);
        if (failed > 0) {
            return output().refuse(Words.BATCH_NOT_ALL.with(failed, outcomes.size()));
        }
        long queries = outcomes.stream()
                .filter(outcome -> outcome.errors() > 0 || level == Severity.WARNING && outcome.warnings() > 0).count();
        if (queries > 0) {
            output().note(Words.BATCH_QUERIES_LEFT.with(queries, outcomes.size()));
        }
        return queries > 0 ? Main.QUERIES : Main.DONE;
    }

    private void write(List<BatchOutcome> outcomes, List<ExportFormat> chosen, JsonGenerator json) throws IOException {
        json.writeStringField("folder", folder);
        json.writeStringField("to", target);
        Json.texts(json, "formats", chosen.stream().map(BatchVerb::word).toList());
        json.writeArrayFieldStart("patterns");
        for (BatchOutcome outcome : outcomes) {
            json.writeStartObject();
            json.writeStringField("file", outcome.source().toString());
            json.writeStringField("state", state(outcome).text());
            json.writeNumberField("errors", outcome.errors());
            json.writeNumberField("warnings", outcome.warnings());
            json.writeStringField("message", outcome.message());
            Json.texts(json, "written", outcome.written());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeNumberField("done", clean(outcomes));
        json.writeNumberField("queries", withQueries(outcomes));
        json.writeNumberField("failed", failed(outcomes));
    }
}
