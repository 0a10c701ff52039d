package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;

import turnheel.engine.instruction.Sized;
import turnheel.engine.knitting.Layout.Paragraph;
import turnheel.engine.knitting.Layout.Role;
import turnheel.engine.knitting.grammar.Instructions;
import turnheel.engine.knitting.grammar.Instructions.AdditionContext;
import turnheel.engine.knitting.grammar.Instructions.CastOnContext;
import turnheel.engine.knitting.grammar.Instructions.PartContext;
import turnheel.engine.knitting.grammar.Instructions.PieceContext;
import turnheel.engine.knitting.grammar.Instructions.PiecesContext;
import turnheel.engine.knitting.grammar.Instructions.ShareContext;
import turnheel.engine.query.Check;
import turnheel.engine.query.Query;

/** Counts that a text divides, against the parts that it divides them into. */
final class Additions {

    private static final int HALVES = 2;

    /** A round lies on two needles or on three to five; common practice. */
    private static final int FEWEST_NEEDLES = 2;
    private static final int MOST_NEEDLES = 5;

    private final List<String> sizes;
    private final Set<Integer> onlySizes;
    private final SizedReader sized;
    private final List<Query> queries = new ArrayList<>();

    /** @param onlySizes the sizes that it is told to, by their place; empty: all */
    Additions(List<String> sizes, Set<Integer> onlySizes) {
        this.sizes = sizes;
        this.onlySizes = onlySizes;
        this.sized = new SizedReader(Math.max(1, sizes.size()), onlySizes);
    }

    /** Of notes, such as where a stitch pattern lies and which needle holds what. */
    static List<Query> of(List<Paragraph> paragraphs, List<String> sizes, ReadingWords table) {
        Additions additions = new Additions(sizes, Set.of());
        SentenceParser parser = new SentenceParser();
        Names none = Names.of(List.of(), new SizeNames(sizes, table));
        for (Paragraph paragraph : paragraphs) {
            if (paragraph.role() == Role.FRONT) {
                for (List<Word> sentence : sentences(paragraph.words())) {
                    parser.addition(Tokens.of(sentence, table, none)).ifPresent(additions::parts);
                }
            }
        }
        return additions.queries;
    }

    /** Those that could be additions. */
    private static List<List<Word>> sentences(List<Word> words) {
        List<List<Word>> sentences = new ArrayList<>();
        int from = 0;
        for (int at = 0; at <= words.size(); at++) {
            if (at == words.size() || words.get(at).is(".")) {
                List<Word> sentence = words.subList(from, at);
                if (sentence.stream().anyMatch(word -> word.is(":"))) {
                    sentences.add(sentence);
                }
                from = at + 1;
            }
        }
        return sentences;
    }

    private void parts(AdditionContext addition) {
        whereCounted(() -> {
            Sized<Integer> total = sized.whole(addition.sized());
            List<Sized<Integer>> counts = new ArrayList<>();
            List<Sized<Integer>> factors = new ArrayList<>();
            for (PartContext part : addition.part()) {
                counts.add(sized.whole(part.sized(0)));
                factors.add(part.sized().size() > 1 ? sized.whole(part.sized(1)) : Sized.all(1));
            }
            differ(SizedReader.span(addition.sized()), size -> sum(counts, factors, size), total::get);
        });
    }

    /** A part that the size does not have is 0; empty where it has none. */
    private static Optional<Integer> sum(List<Sized<Integer>> counts, List<Sized<Integer>> factors, int size) {
        int sum = 0;
        boolean any = false;
        for (int part = 0; part < counts.size(); part++) {
            Optional<Integer> count = counts.get(part).get(size);
            any |= count.isPresent();
            sum += count.orElse(0) * factors.get(part).get(size).orElse(0);
        }
        return any ? Optional.of(sum) : Optional.empty();
    }

    /** What lies on each half, or on each needle, of what a sentence casts on. */
    List<Query> castOn(PiecesContext pieces) {
        List<CastOnContext> castOns = pieces.piece().stream().filter(piece -> piece.castOn() != null)
                .map(PieceContext::castOn).filter(castOn -> castOn.sized() != null).toList();
        if (castOns.size() == 1) {
            pieces.piece().stream().filter(piece -> piece.share() != null)
                    .map(PieceContext::share).filter(share -> SizedReader.has(share, Instructions.EACH))
                    .forEach(share -> whereCounted(() -> share(share, sized.whole(castOns.getFirst().sized()))));
        }
        return queries;
    }

    private void share(ShareContext share, Sized<Integer> castOn) {
        Sized<Integer> each = sized.whole(share.sized(0));
        Optional<Sized<Integer>> told = share.sized().size() > 1 ? Optional.of(sized.whole(share.sized(1)))
                : SizedReader.has(share, Instructions.HALF) ? Optional.of(Sized.all(HALVES)) : Optional.empty();
        differ(SizedReader.span(share.sized(0)), castOn::get, size -> each.get(size).flatMap(one -> told
                .map(parts -> parts.get(size)).orElseGet(() -> castOn.get(size).map(all -> needles(all, one)))
                .map(parts -> one * parts)));
    }

    /** Where the text does not say how many needles there are, that number of them which comes nearest. */
    private static int needles(int all, int each) {
        return each == 0 ? FEWEST_NEEDLES
                : Math.max(FEWEST_NEEDLES, Math.min(MOST_NEEDLES, Math.round((float) all / each)));
    }

    /** A note may hold something else than counts of stitches; then it divides none. */
    private void whereCounted(Runnable check) {
        try {
            check.run();
        } catch (NotSized notSized) {
            queries.add(new Query(Check.TEXT_SIZES, notSized.span().place(), sizes, Integer.toString(sizes.size()),
                    Integer.toString(notSized.values()), ""));
        } catch (Unreadable noCount) {
            // half a stitch, as in the height of something: no count that could be divided
            return;
        }
    }

    private void differ(Span place, IntFunction<Optional<Integer>> expected, IntFunction<Optional<Integer>> found) {
        List<String> concerned = new ArrayList<>();
        List<String> wanted = new ArrayList<>();
        List<String> stated = new ArrayList<>();
        for (int size = 0; size < sizes.size(); size++) {
            Optional<Integer> right = expected.apply(size);
            Optional<Integer> wrong = found.apply(size);
            boolean mine = onlySizes.isEmpty() || onlySizes.contains(size);
            if (mine && right.isPresent() && wrong.isPresent() && !right.equals(wrong)) {
                concerned.add(sizes.get(size));
                wanted.add(right.get().toString());
                stated.add(wrong.get().toString());
            }
        }
        if (!concerned.isEmpty()) {
            queries.add(new Query(Check.TEXT_COUNT, place.place(), concerned, String.join(", ", wanted),
                    String.join(", ", stated), ""));
        }
    }
}
