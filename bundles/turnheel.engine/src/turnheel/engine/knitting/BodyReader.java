package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

import turnheel.engine.instruction.Sized;
import turnheel.engine.knitting.SizeNames.Prefix;
import turnheel.engine.knitting.grammar.Instructions;
import turnheel.engine.knitting.grammar.Instructions.LabelContext;
import turnheel.engine.knitting.grammar.Instructions.ResultContext;
import turnheel.engine.knitting.grammar.Instructions.SentenceContext;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;

/** Paragraphs of instructions to lines that can be knitted. Made for one text. */
final class BodyReader {

    private final ReadingWords table;
    private final SizeNames sizes;
    private final Names names;
    /** The names of the charts that the text has. */
    private final Set<String> charts;
    private final SentenceParser parser = new SentenceParser();
    private final Assembly assembly = new Assembly();
    private final List<Query> queries = new ArrayList<>();
    private Set<Integer> onlySizes = Set.of();

    BodyReader(ReadingWords table, SizeNames sizes, Names names, Set<String> charts) {
        this.table = table;
        this.charts = Set.copyOf(charts);
        this.sizes = sizes;
        this.names = names;
    }

    List<Told> told() {
        return assembly.told();
    }

    List<Query> queries() {
        return queries;
    }

    void section(String title, List<Word> words) {
        assembly.section(title, Span.of(words));
    }

    void stitchPattern(String name) {
        assembly.stitchPattern(name);
    }

    /** Reads a paragraph; how it fared. */
    ReadLine.Kind read(List<Word> words) {
        int before = queries.size();
        boolean any = false;
        onlySizes = Set.of();
        for (int at = 0; at < words.size();) {
            Optional<Prefix> prefix = sizes.prefix(words, at);
            if (prefix.isPresent()) {
                assembly.endLine();
                onlySizes = prefix.get().sizes();
                at = prefix.get().end();
            }
            at = label(words, at);
            int end = sentenceEnd(words, at);
            if (end > at) {
                any |= sentence(words.subList(at, end));
            }
            at = end + 1;
        }
        assembly.endLine();
        boolean unread = queries.subList(before, queries.size()).stream()
                .anyMatch(query -> query.check() == Check.TEXT_UNREAD);
        return unread ? ReadLine.Kind.UNREAD : any ? ReadLine.Kind.INSTRUCTION : ReadLine.Kind.REMARK;
    }

    private SizedReader sized() {
        return new SizedReader(Math.max(1, sizes.names().size()), onlySizes);
    }

    /** Reads a label, if one begins here; the word after it. */
    private int label(List<Word> words, int at) {
        int colon = Labels.colon(words, at);
        if (colon < 0) {
            return at;
        }
        Optional<LabelContext> shape = parser.label(Tokens.of(words.subList(at, colon), table, names));
        if (shape.isEmpty()) {
            return at;
        }
        Span span = Span.of(words.subList(at, colon + 1));
        try {
            assembly.label(Labels.read(shape.get(), sized()), onlySizes, span);
        } catch (NotSized notSized) {
            sizesDiffer(notSized);
            assembly.unknown(onlySizes, span);
        } catch (Unreadable unreadable) {
            unread(span);
            assembly.unknown(onlySizes, span);
        }
        return colon + 1;
    }

    /** Where the full stop is that ends the sentence which begins at {@code from}. */
    private int sentenceEnd(List<Word> words, int from) {
        for (int at = from; at < words.size(); at++) {
            if (words.get(at).is(".") && !isAbbreviation(words, at) && !goesOnWithRepeat(words, at + 1)) {
                return at;
            }
        }
        return words.size();
    }

    private boolean isAbbreviation(List<Word> words, int stop) {
        boolean short1 = stop > 0 && words.get(stop).glued()
                && table.list("abbreviation").contains(words.get(stop - 1).raw().toLowerCase(Locale.ROOT));
        return short1 && stop + 1 < words.size() && Character.isLowerCase(words.get(stop + 1).raw().charAt(0))
                && words.get(stop + 1).kind() == Word.Kind.LETTERS;
    }

    private static boolean goesOnWithRepeat(List<Word> words, int at) {
        return at + 2 < words.size() && words.get(at).is("rep") && words.get(at + 1).is("from") && words.get(at + 2).is("*");
    }

    /** What stands in a chart is plain to whoever counts stitches, if there is such a chart. */
    private List<Word> withoutCharts(List<Word> words, Span span) {
        List<Word> others = new ArrayList<>(words);
        for (int at = 0; at + 1 < others.size(); at++) {
            if (table.list("chart").contains(others.get(at).text()) && at > 0
                    && table.list("of-chart").contains(others.get(at - 1).text())) {
                String name = others.get(at + 1).raw();
                if (!charts.contains(name.toLowerCase(Locale.ROOT))) {
                    queries.add(new Query(Check.TEXT_REFERENCE, span.place(), sizes.names(), "", name, ""));
                }
                others.subList(at - 1, at + 2).clear();
            }
        }
        if (others.size() < words.size() && !others.isEmpty() && others.getLast().is("-")) {
            others.removeLast();
        }
        return others;
    }

    /** Whether the sentence tells something. */
    private boolean sentence(List<Word> words) {
        List<Word> plain = withoutAbbreviationStops(words);
        Span span = Span.of(words);
        List<ReadToken> tokens = Tokens.of(withoutCharts(plain, span), table, names);
        if (isRemark(words)) {
            return false;
        }
        Optional<SentenceContext> shape = parser.sentence(tokens);
        try {
            if (shape.isPresent()) {
                tell(shape.get(), span);
                return true;
            }
        } catch (NotSized notSized) {
            sizesDiffer(notSized);
            assembly.unknown(onlySizes, span);
            shape.get().result().forEach(this::state);
            return true;
        } catch (Unreadable unreadable) {
            unread(span);
            assembly.unknown(onlySizes, span);
            shape.get().result().forEach(this::state);
            return true;
        }
        if (!assembly.awaitsInstructions() && tokens.stream().noneMatch(BodyReader::isOperative)) {
            return false;
        }
        unread(span);
        assembly.unknown(onlySizes, span);
        return true;
    }

    /** The stop of an abbreviation says nothing; that before a repeat from the asterisk parts it. */
    private List<Word> withoutAbbreviationStops(List<Word> words) {
        List<Word> plain = new ArrayList<>();
        for (int at = 0; at < words.size(); at++) {
            if (!words.get(at).is(".") || !isAbbreviation(words, at)) {
                plain.add(words.get(at));
            }
        }
        return plain;
    }

    private boolean isRemark(List<Word> words) {
        String first = words.getFirst().raw().toLowerCase(Locale.ROOT);
        return words.getFirst().kind() == Word.Kind.LETTERS && table.list("remark").contains(first);
    }

    private static boolean isOperative(ReadToken token) {
        return switch (token.getType()) {
            case Instructions.KNIT, Instructions.PURL, Instructions.SLIP, Instructions.STITCH, Instructions.CAST_ON,
                    Instructions.BIND_OFF, Instructions.GRAFT, Instructions.DRAW, Instructions.PICK_UP, Instructions.HOLD,
                    Instructions.REPEAT, Instructions.FLAT_ON, Instructions.TURN, Instructions.SEW, Instructions.WORK,
                    Instructions.CHANGED, Instructions.STITCHES -> true;
            default -> false;
        };
    }

    private void tell(SentenceContext sentence, Span span) {
        PieceReader pieces = new PieceReader(sized(), assembly::over);
        if (sentence.pieces() != null) {
            for (Said said : pieces.all(sentence.pieces())) {
                if (said instanceof Said.Over over && over.pattern().isEmpty()) {
                    queries.add(new Query(Check.TEXT_REFERENCE, span.place(), sizes.names(), "", "", ""));
                }
                assembly.say(said, onlySizes, span);
            }
        }
        sentence.result().forEach(this::state);
    }

    private void state(ResultContext result) {
        ResultContext inner = result;
        while (inner.result() != null) {
            inner = inner.result();
        }
        if (!inner.CHANGED().isEmpty()) {
            return;
        }
        Span span = SizedReader.span(inner.sized());
        try {
            Sized<Integer> stated = sized().whole(inner.sized());
            assembly.state(stated, onlySizes, span);
        } catch (NotSized notSized) {
            sizesDiffer(notSized);
        } catch (Unreadable unreadable) {
            unread(span);
        }
    }

    private void sizesDiffer(NotSized notSized) {
        queries.add(new Query(Check.TEXT_SIZES, notSized.span().place(), sizes.names(),
                Integer.toString(sizes.names().size()), Integer.toString(notSized.values()), ""));
    }

    private void unread(Span span) {
        List<String> concerned = onlySizes.isEmpty() ? sizes.names() : onlySizes.stream().map(sizes.names()::get).toList();
        queries.add(new Query(Check.TEXT_UNREAD, span.place(), concerned, "", "", ""));
    }
}
