package turnheel.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import turnheel.engine.checks.Checks;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.exchange.Edition;
import turnheel.exchange.ExportException;
import turnheel.exchange.ExportFormat;
import turnheel.exchange.Exports;
import turnheel.exchange.SizeFileNames;
import turnheel.exchange.drawing.Drawn;

/** {@code export}: the graded pattern as a file for other programs. */
@Command(name = "export")
final class ExportVerb extends Verb {

    @Mixin
    private PatternArgument pattern;

    @Option(names = "--to", order = 1, paramLabel = "OUT", required = true)
    private String target;

    @Option(names = "--part", order = 2, paramLabel = "PART")
    private String part;

    @Option(names = "--size", order = 3, paramLabel = "SIZE")
    private String size;

    @Mixin
    private StyleOption style;

    @Option(names = "--each-size", order = 4)
    private boolean eachSize;

    @Option(names = "--force", order = 5)
    private boolean force;

    ExportVerb(Output output) {
        super(output);
    }

    @Override
    public Integer call() throws Refusal {
        Path file = PatternArgument.path(target);
        ExportFormat format;
        Graded graded;
        List<String> names = new ArrayList<>();
        try {
            format = ExportFormat.of(file);
            Edition edition = edition(format);
            if (!eachSize) {
                PatternArgument.requireFree(List.of(file), force);
            }
            graded = graded(edition);
            if (eachSize) {
                PatternArgument.requireFree(SizeFileNames.of(file,
                        graded.sizes().stream().map(GradedSize::label).toList()).values(), force);
                Exports.writeEach(graded, edition, file, force).values().forEach(each -> names.add(each.toString()));
            } else {
                Exports.write(graded, edition, file, force);
                names.add(target);
            }
        } catch (ExportException failed) {
            throw new Refusal(failed.getMessage());
        }
        if (isJson()) {
            output().document(Json.document("turnheel-export/1", json -> {
                if (eachSize) {
                    Json.texts(json, "files", names);
                } else {
                    json.writeStringField("file", target);
                }
                json.writeStringField("format", format.ending().substring(1));
            }));
        } else {
            names.forEach(name -> output().line(Words.EXPORT_WRITTEN.with(name)));
        }
        return Verdict.noted(Checks.of(graded), output(), pattern.name());
    }

    /** What is exported. An option that the format has no use for would promise what is not done. */
    private Edition edition(ExportFormat format) throws Refusal {
        if (part != null && !format.canDraw()) {
            throw new Refusal(refused("--part", ExportFormat::canDraw));
        }
        if (style.given().isPresent() && format.kind() != ExportFormat.Kind.WRITTEN) {
            throw new Refusal(refused(style.given().get(), other -> other.kind() == ExportFormat.Kind.WRITTEN));
        }
        if (style.given().isPresent() && part != null) {
            throw new Refusal(Words.EXPORT_DRAWN.with(style.given().get(), "--part"));
        }
        if (size != null && eachSize) {
            throw new Refusal(Words.EACH_SIZE_OR_ONE.text());
        }
        if (size != null && format.kind() == ExportFormat.Kind.WHOLE) {
            throw new Refusal(refused("--size", other -> other.kind() != ExportFormat.Kind.WHOLE));
        }
        Optional<Drawn.What> only = part == null ? Optional.empty()
                : Optional.of(Choice.of("--part", part, Drawn.What.class));
        return new Edition(only, Optional.ofNullable(size), style.chosen());
    }

    private String refused(String option, Predicate<ExportFormat> taking) {
        return refused(option, target, taking);
    }

    /** That an option changes nothing in {@code what}, with the endings of the formats in which it would. */
    static String refused(String option, String what, Predicate<ExportFormat> taking) {
        String endings = Arrays.stream(ExportFormat.values()).filter(taking).map(ExportFormat::ending)
                .collect(Collectors.joining(", "));
        return Words.EXPORT_WHOLE.with(option, what, endings);
    }

    /** The pattern, measured as far as it is exported. */
    private Graded graded(Edition edition) throws Refusal {
        if (edition.size().isEmpty()) {
            return pattern.complete();
        }
        Graded graded = pattern.complete(List.of(size));
        CellName.knownSize(graded.design(), size, pattern.name());
        return graded;
    }
}
