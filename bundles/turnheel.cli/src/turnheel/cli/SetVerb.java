package turnheel.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import com.fasterxml.jackson.core.JsonGenerator;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import turnheel.cli.Table.Side;
import turnheel.engine.checks.Checks;
import turnheel.engine.design.Size;
import turnheel.engine.grading.Graded;
import turnheel.engine.term.Key;
import turnheel.engine.yarn.Patterns;
import turnheel.model.DocumentException;
import turnheel.model.PatternFiles;
import turnheel.model.pattern.Pattern;

/** {@code set}: changes inputs, overrides and what belongs to the whole pattern; all of them or none. */
@Command(name = "set")
final class SetVerb extends Verb {

    @Mixin
    private PatternArgument pattern;

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "KEY=VALUE", descriptionKey = "change")
    private List<String> texts = List.of();

    @Option(names = "--from", order = 1, paramLabel = "BOOK.xlsx")
    private String workbook;

    @Option(names = "--force", order = 2)
    private boolean force;

    @Option(names = "--dry-run", order = 3)
    private boolean dryRun;

    SetVerb(Output output) {
        super(output);
    }

    @Override
    public Integer call() throws Refusal {
        requireSomething();
        Pattern document = pattern.document();
        Graded before = Patterns.grade(PatternArgument.design(document));
        ResultOrigins origins = new ResultOrigins(before.rules(), pattern.name());
        EditedWorkbook edited = workbook == null ? EditedWorkbook.NONE
                : EditedWorkbook.read(workbook, before, force, this::listed);
        List<Change> changes = new ArrayList<>(edited.applyTo(document, origins));
        Set<String> named = new HashSet<>();
        for (String text : texts) {
            Assignment assignment = Assignment.parse(text);
            assignment.applyTo(document, origins).stream().filter(Change::isChange).forEach(changes::add);
            named.add(assignment.name().key());
        }
        Graded after = Patterns.grade(PatternArgument.design(document));
        requireRows(after, named);
        if (!changes.isEmpty() && !dryRun) {
            save(document);
        }
        report(changes, edited.notes());
        return Verdict.noted(Checks.of(after), output(), pattern.name());
    }

    private void requireSomething() throws Refusal {
        if (texts.isEmpty() && workbook == null) {
            throw new Refusal(Words.SET_NOTHING.text());
        }
        if (force && workbook == null) {
            throw new Refusal(Words.FORCE_WITHOUT_WORKBOOK.text());
        }
    }

    /** The one line of a refusal names the first problem; whoever only looks wants to see them all. */
    private void listed(String problem) {
        if (dryRun && !isJson()) {
            output().line(problem);
        }
    }

    private void report(List<Change> changes, List<String> notes) {
        if (isJson()) {
            output().document(Json.document("turnheel-set/1", json -> write(changes, notes, json)));
            return;
        }
        if (changes.isEmpty()) {
            output().line((workbook == null ? Words.SET_UNCHANGED : Words.WORKBOOK_UNCHANGED).with(pattern.name()));
        } else {
            output().lines(table(changes));
        }
        output().lines(notes);
        if (dryRun) {
            output().line(Words.DRY_RUN.with(pattern.name()));
        }
    }

    /** What stands under a key that no part of the pattern has would never be seen again. */
    private void requireRows(Graded after, Set<String> named) throws Refusal {
        for (Size size : after.design().sizes()) {
            List<Key> keys = new ArrayList<>(size.inputs().keySet());
            keys.addAll(size.overrides().keySet());
            for (Key key : keys) {
                if (!after.rules().contains(key)) {
                    throw new Refusal(named.contains(key.name())
                            ? new ResultOrigins(after.rules(), pattern.name()).absence(key)
                            : Words.KEY_LEFT_WITHOUT_PART.with(pattern.name(), size.label(), key));
                }
            }
        }
    }

    private void save(Pattern document) throws Refusal {
        try {
            PatternFiles.save(document, pattern.path());
        } catch (DocumentException unwritable) {
            throw new Refusal(unwritable);
        }
    }

    private static List<String> table(List<Change> changes) {
        Table table = new Table(Side.LEFT, Side.LEFT, Side.RIGHT, Side.RIGHT).row(Words.HEADING_KEY.text(),
                Words.HEADING_SIZE.text(), Words.HEADING_WAS.text(), Words.HEADING_NOW.text());
        for (Change change : changes) {
            table.row(change.name(), change.size().orElse(Words.WHOLE_PATTERN.text()), shown(change.was()),
                    shown(change.now()));
        }
        return table.lines();
    }

    private static String shown(String text) {
        return text.isEmpty() ? Figures.NONE : text;
    }

    private void write(List<Change> changes, List<String> notes, JsonGenerator json) throws IOException {
        json.writeStringField("file", pattern.name());
        json.writeBooleanField("saved", !changes.isEmpty() && !dryRun);
        json.writeArrayFieldStart("changes");
        for (Change change : changes) {
            json.writeStartObject();
            json.writeStringField("key", change.name());
            json.writeStringField("size", change.size().orElse(null));
            json.writeStringField("was", orNull(change.was()));
            json.writeStringField("now", orNull(change.now()));
            json.writeEndObject();
        }
        json.writeEndArray();
        Json.texts(json, "notes", notes);
    }

    private static String orNull(String text) {
        return text.isEmpty() ? null : text;
    }
}
