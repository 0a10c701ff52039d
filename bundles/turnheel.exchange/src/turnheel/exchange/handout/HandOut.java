package turnheel.exchange.handout;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

import turnheel.engine.drawing.StitchChart;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.shaping.Place;
import turnheel.engine.shaping.Sign;
import turnheel.engine.writing.Caution;
import turnheel.engine.writing.PlaceText;
import turnheel.exchange.document.Block;
import turnheel.exchange.document.Document;
import turnheel.exchange.document.Imprint;
import turnheel.exchange.document.Purpose;

/**
 * Hand-outs for those who learn a pattern's techniques: for each what it is and when it stops, its rounds in every
 * size, how to read the knitting, how to mend the usual slips, and for one size the round finder and a chart. On A4
 * paper a technique takes one page where its finder is short (cast-on, cuff, short rows, last stitches), else two; a
 * chart that does not fit below the finder gets a page of its own.
 */
public final class HandOut {

    private final Graded graded;
    private final GradedSize size;
    private final List<Block> blocks = new ArrayList<>();

    private HandOut(Graded graded, GradedSize size) {
        this.graded = graded;
        this.size = size;
    }

    /** What a pattern has to teach, in the order of knitting. */
    public static List<Topic> topics(Graded graded) {
        return Lessons.of(graded).stream().map(Lesson::topic).toList();
    }

    /**
     * The pages of some techniques.
     *
     * @param topics those of {@link #topics} that are wanted
     * @param label the size that finder and chart show; empty: the first
     * @throws IllegalArgumentException when the pattern has no such size
     */
    public static Document of(Graded graded, Set<Topic> topics, Optional<String> label) {
        return new HandOut(graded, graded.size(label.orElse(graded.sizes().getFirst().label()))).document(topics);
    }

    private Document document(Set<Topic> topics) {
        List<Lesson> lessons = Lessons.of(graded).stream().filter(lesson -> topics.contains(lesson.topic())).toList();
        for (Lesson lesson : lessons) {
            if (!blocks.isEmpty()) {
                blocks.add(new Block.NewPage());
            }
            page(lesson);
        }
        cautions(graded, blocks);
        return new Document(Words.text("document.title", title(graded)),
                Words.text("document.subject", String.join(", ", lessons.stream().map(HandOut::name).toList())),
                Imprint.of(graded.design()), blocks);
    }

    static String title(Graded graded) {
        return graded.design().title().isBlank() ? Words.text("untitled") : graded.design().title();
    }

    static void cautions(Graded graded, List<Block> blocks) {
        blocks.add(new Block.Heading(1, Words.text("heading.cautions")));
        Caution.of(graded).forEach(caution -> blocks.add(new Block.Paragraph(Purpose.CAUTION, caution.sentence())));
    }

    private static String name(Lesson lesson) {
        return Words.text("topic." + lesson.topic().name());
    }

    private void page(Lesson lesson) {
        blocks.add(new Block.Heading(1, Words.text("page.heading", name(lesson), lesson.title())));
        lesson.keys().forEach(this::told);
        List<Lesson.Worked> rounds = graded.sizes().stream()
                .flatMap(each -> lesson.rounds(graded, each).stream()).toList();
        if (rounds.isEmpty()) {
            blocks.add(new Block.Paragraph(Purpose.NOTE, Words.text("unsound")));
            return;
        }
        blocks.add(new Block.Heading(2, Words.text("heading.rounds")));
        blocks.add(RoundsTable.of(graded, lesson));
        reading(lesson, rounds);
        blocks.add(new Block.Heading(2, Words.text("heading.slips")));
        blocks.add(new Block.Terms(UsualSlip.of(lesson, rounds).stream().map(UsualSlip::term).toList()));
        finder(lesson);
        lesson.chart().filter(part -> part.chart(graded, size).isPresent()).ifPresent(part -> {
            blocks.add(new Block.Heading(2, Words.text("heading.chart", size.label())));
            blocks.add(new Block.Drawn(StitchChart.of(graded, part, size.label())));
        });
    }

    /** What it is, how it is done, when it stops. */
    private void told(String key) {
        blocks.add(new Block.Paragraph(Purpose.BODY, Words.text(key)));
        List<String> steps = Words.steps(key);
        if (!steps.isEmpty()) {
            blocks.add(new Block.Entries(true, steps));
        }
    }

    /** What lies on the needle after each kind of round, and how the stitches look that make it. */
    private void reading(Lesson lesson, List<Lesson.Worked> rounds) {
        List<Block.Term> terms = new ArrayList<>();
        for (Sign sign : signs(lesson)) {
            if (sign == Sign.EDGE && lesson.topic() != Topic.CAST_ON) {
                // the page of the cast-on tells it, and picked-up stitches have a look of their own
                continue;
            }
            terms.add(new Block.Term(capital(PlaceText.of(sign)), Words.text("sign." + sign.name())));
        }
        Set<Look> looks = new LinkedHashSet<>();
        rounds.stream().flatMap(worked -> Lessons.stitches(worked.round())).forEach(stitch ->
            Look.of(stitch).ifPresent(looks::add));
        looks.forEach(look -> terms.add(new Block.Term(look.word(), look.meaning())));
        if (!terms.isEmpty()) {
            blocks.add(new Block.Heading(2, Words.text("heading.reading")));
            blocks.add(new Block.Terms(terms));
        }
    }

    private Set<Sign> signs(Lesson lesson) {
        Set<Sign> signs = new LinkedHashSet<>();
        graded.sizes().forEach(each -> lesson.places(graded, each).forEach(place -> signs.add(place.sign())));
        return signs;
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private void finder(Lesson lesson) {
        List<Place> places = lesson.places(graded, size);
        if (!places.isEmpty()) {
            blocks.add(new Block.Heading(2, Words.text("heading.finder", size.label())));
            blocks.add(FinderTable.of(places, Words.text("finder.caption", size.label())));
        }
    }
}
