package turnheel.exchange.testknit;

import static turnheel.engine.design.Catalogue.FINISHED_CIRCUMFERENCE;
import static turnheel.engine.design.Catalogue.GAUGE_ROUNDS;
import static turnheel.engine.design.Catalogue.GAUGE_STITCHES;
import static turnheel.engine.design.Catalogue.YARN_PLAIN_LOOPS;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import turnheel.engine.design.Parameter;
import turnheel.engine.grading.Graded;
import turnheel.exchange.document.Block;
import turnheel.exchange.document.Document;
import turnheel.exchange.document.Imprint;
import turnheel.exchange.document.Purpose;

/** Predicted against actual, with what a difference means where it matters. */
public final class Comparison {

    /** A gauge that differs by more than this share is another fabric: <em>common practice</em>. */
    private static final double GAUGE_SHARE = 0.05;
    /** Lengths nearer than this cannot be told apart on a sock, in cm; patterns print halves of a centimetre. */
    private static final double SAME_CM = 0.5;
    /** A scale and a ball band are no better than this share: <em>common practice</em>. */
    private static final double GRAMS_SHARE = 0.05;
    private static final int SWATCH_ROUNDS = 100;

    private final Graded graded;
    private final List<Answer> answers;

    public Comparison(Graded graded, List<Answer> answers) {
        this.graded = graded;
        this.answers = List.copyOf(answers);
    }

    public List<Answer> answers() {
        return answers;
    }

    /** What the difference of an answer means; empty where it means nothing. */
    public Optional<String> meaning(Answer answer) {
        return answer.ratio().flatMap(ratio -> switch (answer.item().kind()) {
            case COUNT -> ratio == 1 ? Optional.empty() : Optional.of(Words.text("means.count"));
            case GAUGE -> gauge(answer, ratio);
            case LENGTH -> length(answer);
            case GRAMS -> grams(answer, ratio);
            case NEEDLE, HOURS, WORDS -> Optional.empty();
        });
    }

    private Optional<String> gauge(Answer answer, double ratio) {
        if (!differs(ratio, GAUGE_SHARE)) {
            return Optional.empty();
        }
        String percent = Figures.plain(Math.abs(ratio - 1) * 100);
        String tighter = ratio > 1 ? "tighter" : "looser";
        return Optional.of(answer.item().is(GAUGE_STITCHES)
                ? Words.text("means.gauge.stitches." + tighter, percent, around(answer, ratio))
                : Words.text("means.gauge.rounds." + tighter, percent));
    }

    /** How the foot comes out around at another gauge: the same stitches, each so much narrower. */
    private String around(Answer answer, double ratio) {
        return Item.of(graded, graded.size(answer.size())).stream().filter(item -> item.is(FINISHED_CIRCUMFERENCE))
                .filter(item -> item.predicted().isPresent()).findFirst()
                .map(item -> Figures.withUnit(item.predicted().getAsDouble() / ratio, item.kind())).orElse("–");
    }

    private Optional<String> length(Answer answer) {
        double difference = answer.difference().orElseThrow();
        if (Math.abs(difference) <= SAME_CM) {
            return Optional.empty();
        }
        Parameter gauge = answer.item().is(FINISHED_CIRCUMFERENCE) ? GAUGE_STITCHES : GAUGE_ROUNDS;
        Optional<Double> ratio = ofSize(answer.size(), gauge).flatMap(Answer::ratio);
        if (ratio.isEmpty()) {
            return Optional.of(Words.text("means.length.noGauge"));
        }
        double expected = answer.item().predicted().getAsDouble() / ratio.get();
        boolean explained = Math.abs(answer.actual().getAsDouble() - expected) <= SAME_CM;
        return Optional.of(Words.text(explained ? "means.length.explained" : "means.length.unexplained",
                Figures.withUnit(expected, Item.Kind.LENGTH)));
    }

    private Optional<String> grams(Answer answer, double ratio) {
        if (!differs(ratio, GRAMS_SHARE)) {
            return Optional.empty();
        }
        String factor = Figures.hundredths(ratio);
        if (isOtherFabric(answer.size())) {
            return Optional.of(Words.text("means.grams.otherGauge", factor));
        }
        boolean beyondMargin = ratio > 1 + graded.design().materials().margin().percent() / 100;
        String corrected = Words.text(beyondMargin ? "means.grams.beyond" : "means.grams", factor);
        return Optional.of(graded.size(answer.size()).cell(YARN_PLAIN_LOOPS)
                .map(loops -> Words.text("means.grams.swatch", corrected,
                        Long.toString(Math.round(loops.value() / SWATCH_ROUNDS)), Integer.toString(SWATCH_ROUNDS),
                        Figures.plain(answer.actual().getAsDouble()))).orElse(corrected));
    }

    /** Whether the size was knitted at a gauge that the predictions of yarn do not speak of. */
    private boolean isOtherFabric(String size) {
        return List.of(GAUGE_STITCHES, GAUGE_ROUNDS).stream()
                .anyMatch(gauge -> ofSize(size, gauge).flatMap(Answer::ratio)
                        .filter(ratio -> differs(ratio, GAUGE_SHARE)).isPresent());
    }

    private Optional<Answer> ofSize(String size, Parameter parameter) {
        return answers.stream().filter(answer -> answer.size().equals(size) && answer.item().is(parameter)).findFirst();
    }

    private static boolean differs(double ratio, double share) {
        return Math.abs(ratio - 1) > share + 1e-9;
    }

    /** How many times the predicted yarn was used, on average over the sizes knitted at the pattern's gauge. */
    public Optional<Double> yarnFactor() {
        List<Double> factors = answers.stream().filter(answer -> answer.item().kind() == Item.Kind.GRAMS)
                .filter(answer -> !isOtherFabric(answer.size())).flatMap(answer -> answer.ratio().stream()).toList();
        return factors.isEmpty() ? Optional.empty()
                : Optional.of(factors.stream().mapToDouble(Double::doubleValue).average().orElseThrow());
    }

    /** All of it to be read. */
    public Document document() {
        List<Block> blocks = new ArrayList<>();
        for (String size : answers.stream().map(Answer::size).distinct().toList()) {
            blocks.add(new Block.Heading(1, Words.text("sheet.size", size)));
            blocks.add(table(size));
        }
        yarnFactor().ifPresent(factor -> {
            blocks.add(new Block.Heading(1, Words.text("heading.yarnFactor")));
            blocks.add(new Block.Paragraph(Purpose.BODY, Words.text("means.factor", Figures.hundredths(factor))));
        });
        String title = graded.design().title().isBlank() ? Words.text("untitled") : graded.design().title();
        return new Document(Words.text("compared.title", title), Words.text("compared.subject"),
                Imprint.of(graded.design()), blocks);
    }

    private Block.Table table(String size) {
        List<Block.Row> rows = answers.stream().filter(answer -> answer.size().equals(size)).map(this::row).toList();
        return new Block.Table(Words.text("caption.compared", size), List.of(Words.text("head.what"),
                Words.text("head.predicted"), Words.text("head.actual"), Words.text("head.difference"),
                Words.text("head.means"), Words.text("head.remark")), rows);
    }

    private Block.Row row(Answer answer) {
        Item item = answer.item();
        Block.Cell actual = answer.actual().isPresent()
                ? new Block.Cell.Figure(Figures.withUnit(answer.actual().getAsDouble(), item.kind()))
                : words(answer.words());
        return new Block.Row(List.of(new Block.Cell.Words(item.label()),
                item.predicted().isEmpty() ? new Block.Cell.Nothing()
                        : new Block.Cell.Figure(Figures.withUnit(item.predicted().getAsDouble(), item.kind())),
                actual,
                answer.difference().<Block.Cell>map(difference -> new Block.Cell.Figure(Figures.signed(difference)))
                        .orElseGet(Block.Cell.Nothing::new),
                meaning(answer).map(Comparison::words).orElseGet(Block.Cell.Nothing::new), words(answer.remark())));
    }

    private static Block.Cell words(String text) {
        return text.isEmpty() ? new Block.Cell.Nothing() : new Block.Cell.Words(text);
    }
}
