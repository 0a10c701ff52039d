package turnheel.exchange.sizes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Length;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Role;
import turnheel.engine.design.Size;
import turnheel.engine.design.Spelling;
import turnheel.engine.term.Key;
import turnheel.exchange.sizes.SizeTableProblem.Kind;
import turnheel.exchange.table.Grid;
import turnheel.exchange.table.TextGrid;
import turnheel.exchange.workbook.WorkbookGrid;

/**
 * Reads tables of sizes. The first row holds headings: {@code size} or {@code label}, and measurements as in
 * {@code foot-length}, {@code Foot length (cm)} or {@code body.footLength}; every other row is a size. A cell is a
 * quantity with its unit ({@code 240 mm}, {@code 9 1/2 in}), or a number under a heading with a unit. An empty cell is
 * a measurement that the size does not have. Nothing here throws for what stands in a table: what cannot be read is a
 * problem, and the rest is read all the same.
 */
public final class SizeTableReader {

    private static final Set<String> LABEL_HEADINGS = Set.of("size", "label");
    private static final int NOWHERE = 0;

    private final Grid grid;
    private final List<SizeTableProblem> problems = new ArrayList<>();
    /** By position, from 0. */
    private final Map<Integer, SizeColumn> columns = new TreeMap<>();
    /** Headings that cannot be understood; what stands below them needs no problem of its own. */
    private final Set<Integer> unknownColumns = new HashSet<>();
    private final List<Size> sizes = new ArrayList<>();
    private final Map<String, Integer> rowsByLabel = new HashMap<>();
    private int labelColumn;

    private SizeTableReader(Grid grid) {
        this.grid = grid;
    }

    /** Reads separated values: commas, semicolons or tabs. */
    public static SizeTableReading text(byte[] content) {
        return new SizeTableReader(TextGrid.read(content)).read();
    }

    /** Reads the first sheet of an .xlsx workbook that is not hidden. */
    public static SizeTableReading workbook(byte[] content) {
        return new SizeTableReader(WorkbookGrid.read(content)).read();
    }

    /** The word that stands for a measurement in headings: {@code foot-length} for {@code body.footLength}. */
    public static String word(Parameter parameter) {
        return SizeColumn.word(parameter);
    }

    private SizeTableReading read() {
        if (!grid.rows().isEmpty() && head(grid.rows().getFirst())) {
            grid.rows().stream().skip(1).forEach(this::size);
        }
        grid.fault().ifPresent(fault -> problem(Kind.UNREADABLE, NOWHERE, NOWHERE, "", "",
                Words.plain("fault." + fault.name())));
        if (sizes.isEmpty() && problems.isEmpty()) {
            problem(Kind.NO_SIZES, NOWHERE, NOWHERE, "", "", "");
        }
        return new SizeTableReading(sizes, problems);
    }

    private boolean head(Grid.Row row) {
        List<String> headings = row.cells();
        labelColumn = IntStream.range(0, headings.size())
                .filter(i -> LABEL_HEADINGS.contains(headings.get(i).toLowerCase(Locale.ROOT))).findFirst().orElse(-1);
        if (labelColumn < 0) {
            problem(Kind.NO_LABEL_COLUMN, row.number(), NOWHERE, "", String.join(", ", headings), "");
            return false;
        }
        Set<Key> known = new HashSet<>();
        for (int i = 0; i < headings.size(); i++) {
            if (i != labelColumn && !headings.get(i).isEmpty()) {
                column(row, i, headings.get(i), known);
            }
        }
        return true;
    }

    private void column(Grid.Row row, int position, String heading, Set<Key> known) {
        Optional<SizeColumn> column = SizeColumn.of(heading);
        if (column.isEmpty()) {
            unknownColumns.add(position);
            String all = String.join(" ", SizeColumn.words());
            problem(Kind.UNKNOWN_COLUMN, row.number(), position, "", heading,
                    Spelling.suggestion(heading, SizeColumn.words())
                            .map(word -> Words.text("headings.nearest", word, all))
                            .orElseGet(() -> Words.text("headings", all)));
        } else if (known.add(column.get().parameter().key())) {
            columns.put(position, column.get());
        } else {
            unknownColumns.add(position);
            problem(Kind.DUPLICATE_COLUMN, row.number(), position, "", heading,
                    SizeColumn.word(column.get().parameter()));
        }
    }

    private void size(Grid.Row row) {
        String label = row.cell(labelColumn);
        if (label.isEmpty()) {
            problem(Kind.NO_LABEL, row.number(), labelColumn, "", "", "");
            return;
        }
        Integer before = rowsByLabel.putIfAbsent(label, row.number());
        if (before != null) {
            problem(Kind.DUPLICATE_LABEL, row.number(), labelColumn, label, label, before.toString());
            return;
        }
        Map<Key, Quantity> inputs = new LinkedHashMap<>();
        columns.forEach((position, column) -> measurement(row, label, position, column, inputs));
        strays(row, label);
        try {
            Size size = new Size("s" + (sizes.size() + 1), label, inputs, Map.of());
            order(row, size);
            sizes.add(size);
        } catch (IllegalArgumentException refused) {
            problem(Kind.REFUSED, row.number(), labelColumn, label, label, refused.getMessage());
        }
    }

    private void measurement(Grid.Row row, String label, int position, SizeColumn column, Map<Key, Quantity> inputs) {
        String text = row.cell(position);
        if (text.isEmpty()) {
            if (!column.parameter().equals(Catalogue.FOOT_LENGTH)) {
                problem(Kind.EMPTY_CELL, row.number(), position, label, "", SizeColumn.word(column.parameter()));
            }
        } else if (column.lacksUnit(text)) {
            problem(Kind.NO_UNIT, row.number(), position, label, text, SizeColumn.word(column.parameter()));
        } else {
            quantity(row, label, position, column)
                    .ifPresent(quantity -> inputs.put(column.parameter().key(), quantity));
        }
    }

    private Optional<Quantity> quantity(Grid.Row row, String label, int position, SizeColumn column) {
        Quantity quantity;
        try {
            quantity = column.quantity(row.cell(position));
        } catch (IllegalArgumentException unreadable) {
            problem(Kind.NOT_A_QUANTITY, row.number(), position, label, row.cell(position),
                    SizeColumn.word(column.parameter()));
            return Optional.empty();
        }
        try {
            column.parameter().require(Role.INPUT, quantity);
            return Optional.of(quantity);
        } catch (IllegalArgumentException refused) {
            problem(Kind.REFUSED, row.number(), position, label, row.cell(position), refused.getMessage());
            return Optional.empty();
        }
    }

    private void strays(Grid.Row row, String label) {
        for (int i = 0; i < row.cells().size(); i++) {
            if (i != labelColumn && !columns.containsKey(i) && !unknownColumns.contains(i) && !row.cell(i).isEmpty()) {
                problem(Kind.VALUE_WITHOUT_COLUMN, row.number(), i, label, row.cell(i), "");
            }
        }
    }

    private void order(Grid.Row row, Size size) {
        int position = columns.entrySet().stream()
                .filter(column -> column.getValue().parameter().equals(Catalogue.FOOT_LENGTH)).map(Map.Entry::getKey)
                .findFirst().orElse(labelColumn);
        Optional<Length> length = footLength(size);
        if (length.isEmpty() && row.cell(position).isEmpty() || position == labelColumn) {
            problem(Kind.NO_FOOT_LENGTH, row.number(), position, size.label(), "", "");
            return;
        }
        Optional<Length> before = sizes.isEmpty() ? Optional.empty() : footLength(sizes.getLast());
        if (length.isPresent() && before.isPresent() && length.get().mm() < before.get().mm()) {
            problem(Kind.UNORDERED, row.number(), position, size.label(), length.get().toString(),
                    before.get().toString());
        }
    }

    private static Optional<Length> footLength(Size size) {
        return size.inputs().get(Catalogue.FOOT_LENGTH.key()) instanceof Length length ? Optional.of(length)
                : Optional.empty();
    }

    /** @param position of the column, from 0; {@link #NOWHERE} without a row is the whole file */
    private void problem(Kind kind, int row, int position, String subject, String found, String detail) {
        boolean wholeRow = row == NOWHERE || kind == Kind.NO_LABEL_COLUMN;
        problems.add(new SizeTableProblem(kind, row, wholeRow ? 0 : position + 1, subject, found, detail));
    }
}
