package turnheel.exchange.manuscript;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

import turnheel.engine.query.Place;
import turnheel.engine.query.Query;
import turnheel.engine.query.Sentences;
import turnheel.exchange.table.FormulaLookalikes;
import turnheel.exchange.table.QueryColumn;

/**
 * The numbered queries of a manuscript, as an editor hands them to the author and gets them back: place, sizes, query,
 * suggested correction, answer, done. Against the next version of the text an entry keeps its number and its answer as long
 * as its line reads the same; what is asked of changed lines is new, and what is no longer asked stays in the list as gone.
 *
 * @param entries by number
 */
public record QueryList(List<Entry> entries) {

    /** The list before the first version was checked. */
    public static final QueryList EMPTY = new QueryList(List.of());

    private static final List<String> COLUMNS = QueryColumn.ofManuscripts().stream().map(QueryColumn::heading).toList();
    private static final String TEXT_MARK = "'";

    public QueryList {
        entries = List.copyOf(entries);
    }

    /** How an entry stands against the version checked last. */
    public enum State {
        NEW, OPEN, GONE;

        /** As the list spells it. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * One query.
     *
     * @param number counted from 1 over all versions; kept
     * @param line in the version checked last in which it was asked
     * @param text that line
     * @param sizes their labels, separated by commas
     * @param answer the author's; kept as it was written
     * @param done the editor's mark; kept as it was written
     */
    public record Entry(int number, State state, int line, String text, String sizes, String check, String query,
            String correction, String answer, String done) {

        private boolean asksTheSame(Entry other) {
            return text.equals(other.text) && sizes.equals(other.sizes) && check.equals(other.check)
                    && query.equals(other.query);
        }

        private Entry with(State now, int newLine) {
            return new Entry(number, now, newLine, text, sizes, check, query, correction, answer, done);
        }

        private Entry numbered(int own) {
            return new Entry(own, state, line, text, sizes, check, query, correction, answer, done);
        }
    }

    /** A file is something else. The message says what it lacks, as a clause. */
    public static final class NoQueryListException extends Exception {

        private static final long serialVersionUID = 1;

        NoQueryListException(String message) {
            super(message);
        }
    }

    /** This list against the next version of the text. */
    public QueryList next(String text, List<Query> queries) {
        List<String> lines = text.lines().toList();
        List<Entry> asked = queries.stream().map(query -> entry(query, lines)).toList();
        List<Entry> now = new ArrayList<>();
        Set<Entry> known = new HashSet<>();
        for (Entry before : entries) {
            Predicate<Entry> same = entry -> !known.contains(entry) && entry.asksTheSame(before);
            asked.stream().filter(same).findFirst().ifPresentOrElse(entry -> {
                known.add(entry);
                now.add(before.with(State.OPEN, entry.line()));
            }, () -> now.add(before.with(State.GONE, before.line())));
        }
        int number = entries.stream().mapToInt(Entry::number).max().orElse(0);
        for (Entry entry : asked) {
            if (!known.contains(entry)) {
                number++;
                now.add(entry.numbered(number));
            }
        }
        return new QueryList(now);
    }

    private static Entry entry(Query query, List<String> lines) {
        int line = switch (query.place()) {
            case Place.Text(int number, int from, int to) -> number;
            case Place.Row row -> 0;
        };
        String text = line >= 1 && line <= lines.size() ? lines.get(line - 1).strip() : "";
        return new Entry(0, State.NEW, line, text, String.join(", ", query.sizes()), query.check().id(),
                Sentences.of(query), query.correction(), "", "");
    }

    /** The list as comma-separated values (RFC 4180); what a spreadsheet program would run has an apostrophe in front. */
    public String text() {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter records = new CSVPrinter(text, CSVFormat.RFC4180)) {
            records.printRecord(COLUMNS);
            for (Entry entry : entries) {
                records.printRecord(entry.number(), entry.state().word(), entry.line(), safe(entry.text()),
                        safe(entry.sizes()), entry.check(), safe(entry.query()), safe(entry.correction()),
                        safe(entry.answer()), safe(entry.done()));
            }
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
        return text.toString();
    }

    private static String safe(String text) {
        return FormulaLookalikes.contains(text) ? TEXT_MARK + text : text;
    }

    private static String plain(String text) {
        return text.startsWith(TEXT_MARK) && FormulaLookalikes.contains(text.substring(1)) ? text.substring(1) : text;
    }

    /**
     * Reads a list back, whatever a spreadsheet program did to the order of its columns.
     *
     * @throws NoQueryListException when a column is missing or a number is none
     */
    public static QueryList read(String text) throws NoQueryListException {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setIgnoreEmptyLines(true).get();
        try (CSVParser records = CSVParser.parse(text, format)) {
            for (String column : COLUMNS) {
                if (!records.getHeaderMap().containsKey(column)) {
                    throw new NoQueryListException("it has no column \"%s\"".formatted(column));
                }
            }
            List<Entry> entries = new ArrayList<>();
            for (CSVRecord entry : records) {
                entries.add(entry(entry));
            }
            return new QueryList(entries);
        } catch (IOException | IllegalArgumentException broken) {
            throw new NoQueryListException("a row of it cannot be read");
        }
    }

    private static Entry entry(CSVRecord record) {
        return new Entry(Integer.parseInt(field(record, QueryColumn.NUMBER).strip()),
                State.valueOf(field(record, QueryColumn.STATE).strip().toUpperCase(Locale.ROOT)),
                Integer.parseInt(field(record, QueryColumn.LINE).strip()), field(record, QueryColumn.TEXT),
                field(record, QueryColumn.SIZES), field(record, QueryColumn.CHECK), field(record, QueryColumn.QUERY),
                field(record, QueryColumn.CORRECTION), field(record, QueryColumn.ANSWER),
                field(record, QueryColumn.DONE));
    }

    private static String field(CSVRecord record, QueryColumn column) {
        return plain(record.get(column.heading()));
    }
}
