package turnheel.exchange.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.apache.poi.xssf.usermodel.XSSFWorkbook;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.OwnRow;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Role;
import turnheel.engine.design.Size;
import turnheel.engine.design.Spelling;
import turnheel.engine.grading.Graded;
import turnheel.engine.term.Key;
import turnheel.exchange.edits.Edit;
import turnheel.exchange.edits.EditProblem;
import turnheel.exchange.edits.EditProblem.Kind;
import turnheel.exchange.edits.Edits;

/**
 * Reads an exported workbook back and compares it, cell by cell, with what the export of the pattern writes: what
 * differs is what a person changed. Nothing is computed; formulas are recognised by their words.
 */
public final class WorkbookReader {

    private final Graded graded;
    private final CountsTable table;
    private final List<EditProblem> problems = new ArrayList<>();
    private final Map<Key, Integer> rows = new LinkedHashMap<>();
    private final Map<String, Integer> columns = new HashMap<>();

    private WorkbookReader(Graded graded, CountsTable table) {
        this.graded = graded;
        this.table = table;
    }

    /**
     * What was changed in a workbook.
     *
     * @param content the file's bytes
     * @param graded the pattern as it is now
     * @param damaged what to say of a file that is no workbook, as a clause
     */
    public static Edits read(byte[] content, Graded graded, String damaged) {
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(content))) {
            Optional<CountsTable> table = CountsTable.in(workbook);
            return table.isEmpty() ? Edits.unreadable(new EditProblem(Kind.NO_COUNTS, "", "", "", ""))
                    : new WorkbookReader(graded, table.get()).read(workbook);
        } catch (IOException | RuntimeException broken) {
            // The library tells of damaged, encrypted and foreign files with two dozen unchecked exceptions.
            return Edits.unreadable(new EditProblem(Kind.UNREADABLE, "", "", "", damaged));
        }
    }

    private Edits read(XSSFWorkbook workbook) {
        List<EditProblem> origin = WorkbookOrigin.problems(workbook, graded.design());
        problems.addAll(origin);
        columns();
        rows();
        if (problems.size() > origin.size()) {
            // of a table with holes every cell would be a problem
            return new Edits(List.of(), problems);
        }
        if (!anyFormula()) {
            problem(Kind.VALUES_ONLY, table.place(), "", "", "");
            return new Edits(List.of(), problems);
        }
        NumberReader numbers = new NumberReader(graded, table, problems, origin.isEmpty());
        List<Edit> edits = new ArrayList<>();
        graded.parameters().stream().filter(parameter -> parameter.role() != Role.OWN)
                .forEach(parameter -> edits.addAll(numbers.edits(parameter, rows.get(parameter.key()), columns)));
        OwnRowReader own = new OwnRowReader(graded, table, problems);
        rows.forEach((key, row) -> {
            if (OwnRow.isOwn(key)) {
                own.edit(key, row, columns).ifPresent(edits::add);
            }
        });
        problems.addAll(MeasurementsSheet.typedOver(workbook));
        return new Edits(edits, problems);
    }

    private void columns() {
        List<String> labels = graded.design().sizes().stream().map(Size::label).toList();
        Map<String, String> known = labels.stream().collect(Collectors.toMap(String::strip, label -> label, (one, other) -> one));
        table.headings().forEach((column, heading) -> {
            String label = known.get(heading);
            if (label == null && table.holdsNumbers(column)) {
                problem(Kind.SIZE_UNKNOWN, table.place(), "", heading, String.join(", ", labels));
            } else if (label != null && columns.putIfAbsent(label, column) != null) {
                problem(Kind.SIZE_TWICE, table.place(), label, "", "");
            }
        });
        labels.stream().filter(label -> !columns.containsKey(label))
                .forEach(label -> problem(Kind.SIZE_MISSING, table.place(), label, "", ""));
    }

    private void rows() {
        List<Key> keys = graded.parameters().stream().map(Parameter::key).toList();
        for (CountsTable.KeyedRow row : table.rows()) {
            Key key = new Key(row.key());
            String place = table.place(row.row(), 0);
            if (keys.contains(key) || OwnRow.isOwn(key)) {
                if (rows.putIfAbsent(key, row.row()) != null) {
                    problem(Kind.KEY_TWICE, place, key.name(), "", "");
                }
            } else if (Catalogue.all().stream().anyMatch(parameter -> parameter.key().equals(key))) {
                problem(Kind.KEY_ABSENT, place, key.name(), "", "");
            } else {
                problem(Kind.KEY_UNKNOWN, place, "", key.name(),
                        Spelling.nearest(key.name(), keys.stream().map(Key::name).toList()));
            }
        }
        keys.stream().filter(key -> !rows.containsKey(key))
                .forEach(key -> problem(Kind.ROW_MISSING, table.place(), key.name(), "", ""));
    }

    private boolean anyFormula() {
        return rows.values().stream().anyMatch(row -> columns.values().stream()
                .anyMatch(column -> table.cell(row, column) instanceof FoundCell.Formula));
    }

    private void problem(Kind kind, String place, String subject, String found, String detail) {
        problems.add(new EditProblem(kind, place, subject, found, detail));
    }
}
