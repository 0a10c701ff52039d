package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import turnheel.engine.knitting.Layout.Paragraph;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;

/** Abbreviations that are used and not in the list, or in the list and not used; nothing where a text has no list. */
final class AbbreviationChecks {

    /** What stands between an abbreviation and its meaning. */
    private static final Pattern EXPLAINED = Pattern.compile("=|:| [–—-] |(?<=\\S)\\s*\\|");

    private final List<String> sizes;
    private final ReadingWords table;
    private final Map<String, Span> listed = new LinkedHashMap<>();
    private final Map<String, Span> used = new LinkedHashMap<>();

    AbbreviationChecks(List<String> sizes, ReadingWords table) {
        this.sizes = sizes;
        this.table = table;
    }

    List<Query> of(List<Paragraph> paragraphs, List<String> lines) {
        Set<Integer> listLines = new HashSet<>();
        for (Paragraph paragraph : paragraphs) {
            if (!paragraph.words().isEmpty() && isList(paragraph)) {
                int first = paragraph.words().getFirst().line();
                int last = paragraph.words().getLast().line();
                for (int line = first; line <= last; line++) {
                    listLines.add(line);
                    if (paragraph.role() == Layout.Role.FRONT) {
                        list(lines.get(line), line);
                    }
                }
            }
        }
        for (Paragraph paragraph : paragraphs) {
            int line = paragraph.words().isEmpty() ? -1 : paragraph.words().getFirst().line();
            int last = line < 0 ? -1 : paragraph.words().getLast().line();
            for (; line >= 0 && line <= last; line++) {
                if (!listLines.contains(line)) {
                    use(lines.get(line), line, paragraph.role() == Layout.Role.BODY);
                }
            }
        }
        return listed.isEmpty() ? List.of() : queries();
    }

    private boolean isList(Paragraph paragraph) {
        return table.list("abbreviations").contains(paragraph.section().toLowerCase(Locale.ROOT));
    }

    private List<Query> queries() {
        List<Query> queries = new ArrayList<>();
        Set<String> known = new HashSet<>(table.list("short"));
        // the name of a round explains itself
        List<String> ofNames = table.list("short-in-names");
        used.forEach((word, span) -> {
            if (known.contains(word) && !ofNames.contains(word) && !listed.containsKey(word)) {
                queries.add(new Query(Check.TEXT_UNLISTED, span.place(), sizes, "", word, ""));
            }
        });
        listed.forEach((word, span) -> {
            if (!used.containsKey(word)) {
                queries.add(new Query(Check.TEXT_UNUSED, span.place(), sizes, "", word, ""));
            }
        });
        return queries;
    }

    /** Entries of one line: one, or several parted by semicolons. */
    private void list(String line, int number) {
        int from = 0;
        int colon = line.indexOf(':');
        String before = colon < 0 ? "" : line.substring(0, colon).replace("*", "").strip().toLowerCase(Locale.ROOT);
        if (table.list("abbreviations").contains(before)) {
            from = colon + 1;
        }
        for (String entry : line.substring(from).split(";")) {
            Matcher explained = EXPLAINED.matcher(entry);
            if (explained.find()) {
                Span span = new Span(number, from, from + entry.length());
                for (String word : entry.substring(0, explained.start()).split("[/,|]| or ")) {
                    String bare = word.replaceAll("[*\\\\]|^\\s*[-+•]\\s", "").strip();
                    if (isAbbreviation(bare)) {
                        listed.put(base(bare), span);
                    }
                }
            }
            from += entry.length() + 1;
        }
    }

    /** Not the head of a table, nor the line under it. */
    private boolean isAbbreviation(String word) {
        return word.indexOf(' ') < 0 && word.chars().anyMatch(Character::isLetter)
                && !table.list("abbreviations").contains(word.toLowerCase(Locale.ROOT));
    }

    /** A word without what may be left off: st(s) is st, and sts is st too. */
    private String base(String word) {
        String small = word.toLowerCase(Locale.ROOT).replaceAll("\\(.*\\)", "");
        boolean plural = small.endsWith("s") && table.list("short").contains(small.substring(0, small.length() - 1));
        return plural ? small.substring(0, small.length() - 1) : small;
    }

    private void use(String line, int number, boolean body) {
        for (int at = 0; at < line.length();) {
            int end = at;
            while (end < line.length() && (Character.isLetterOrDigit(line.charAt(end)) || line.charAt(end) == '&')) {
                end++;
            }
            if (end > at) {
                String word = base(line.substring(at, end));
                String letters = word.replaceFirst("\\d+$", "");
                boolean whole = table.list("short").contains(word);
                Span span = new Span(number, at, end);
                if (body || whole && word.length() > 1) {
                    used.putIfAbsent(whole ? word : letters, span);
                    used.putIfAbsent(word, span);
                }
                at = end;
            } else {
                at++;
            }
        }
    }
}
