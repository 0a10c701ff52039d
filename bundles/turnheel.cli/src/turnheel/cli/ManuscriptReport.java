package turnheel.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import turnheel.engine.query.Place;
import turnheel.engine.query.Query;
import turnheel.engine.query.Sentences;
import turnheel.engine.query.Severity;

/**
 * The queries of a manuscript as a compiler shows them: where, what, for which sizes; the line with the span marked
 * under it; what was expected and, where only one thing can be right, what to write.
 */
final class ManuscriptReport {

    private static final String MARGIN = "    ";
    private static final int LONGEST_QUOTE = 160;
    private static final String CUT = "…";

    private final String file;
    private final List<String> text;
    private final Paint paint;

    ManuscriptReport(String file, String text, Paint paint) {
        this.file = file;
        this.text = text.lines().toList();
        this.paint = paint;
    }

    List<String> lines(List<Query> queries) {
        List<String> lines = new ArrayList<>();
        for (Query query : queries) {
            switch (query.place()) {
                case Place.Text place -> lines.addAll(lines(query, place));
                case Place.Row row -> lines.add(query.check().id() + " " + Sentences.of(query));
            }
            lines.add("");
        }
        return lines;
    }

    private List<String> lines(Query query, Place.Text place) {
        boolean error = query.severity() == Severity.ERROR;
        String kind = query.severity().name().toLowerCase(Locale.ROOT);
        String sizes = query.sizes().isEmpty() ? "" : Words.CHECK_SIZES.with(String.join(", ", query.sizes()));
        List<String> lines = new ArrayList<>();
        lines.add(Words.CHECK_PLACE.with(file, place.line(), place.from()) + " "
                + paint.of(error ? Paint.Tone.ERROR : Paint.Tone.WARNING, kind) + " " + query.check().id() + sizes);
        if (place.line() >= 1 && place.line() <= text.size()) {
            quote(text.get(place.line() - 1), place, lines);
        }
        String correction = query.correction().isEmpty() ? "" : " " + Words.CHECK_CORRECTION.with(query.correction());
        lines.add(MARGIN + Sentences.of(query) + correction);
        return lines;
    }

    /** A long line is quoted around the span only. */
    private void quote(String line, Place.Text place, List<String> lines) {
        int from = Math.clamp(place.from() - 1, 0, line.length());
        int to = Math.clamp(place.to() - 1, from, line.length());
        int start = Math.clamp(from - LONGEST_QUOTE / 4, 0, Math.max(0, line.length() - LONGEST_QUOTE));
        int end = Math.min(line.length(), start + LONGEST_QUOTE);
        String before = (start > 0 ? CUT : "") + line.substring(start, from);
        String marked = line.substring(from, Math.min(to, end));
        String after = line.substring(Math.min(to, end), end) + (end < line.length() ? CUT : "");
        lines.add(MARGIN + oneLine(before) + paint.of(Paint.Tone.SPAN, oneLine(marked)) + oneLine(after));
        lines.add(MARGIN + " ".repeat(TextWidth.of(oneLine(before)))
                + paint.of(Paint.Tone.SPAN, "^".repeat(Math.max(1, TextWidth.of(oneLine(marked))))));
    }

    private static String oneLine(String text) {
        return text.replace('\t', ' ');
    }
}
