package turnheel.exchange.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import turnheel.engine.checks.Checks;
import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.FlapLength;
import turnheel.engine.design.Gauge;
import turnheel.engine.design.Heel;
import turnheel.engine.design.Length;
import turnheel.engine.design.LengthUnit;
import turnheel.engine.design.Lengths;
import turnheel.engine.design.Materials;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.Size;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.grading.Graded;
import turnheel.engine.query.Severity;
import turnheel.engine.shaping.Rounds;
import turnheel.engine.wording.HouseStyles;
import turnheel.engine.writing.PlaceText;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.document.Block;
import turnheel.exchange.document.Document;
import turnheel.exchange.document.PatternDocument;
import turnheel.exchange.document.Purpose;
import turnheel.exchange.imprint.PartWords;

/**
 * A small sock in thick yarn that is made by the same rules as a pattern, for a class: toe, heel and cuff are the
 * pattern's, the leg is short and straight, stitch patterns and colours are left out. It comes with the stages at which
 * to stop.
 *
 * @param graded the practice sock, in one size
 */
public record Practice(Graded graded) {

    /**
     * Stitches over 10 cm: thick enough to see every stitch from the other side of a table. <em>Common practice.</em>
     */
    private static final int STITCHES = 19;

    /**
     * Feet in mm, the smallest first: a small foot is soon done, but some parts need more stitches than it has. Our own
     * choice.
     */
    private static final List<Integer> FEET_MM = List.of(180, 200, 220, 240, 260, 280);

    /** The practice sock of a pattern; empty when its parts do not work out in thick yarn on any of the feet. */
    public static Optional<Practice> of(Design design) {
        return FEET_MM.stream().map(foot -> Patterns.grade(practice(design, foot)))
                .filter(graded -> Checks.of(graded).stream().noneMatch(query -> query.severity() == Severity.ERROR))
                .findFirst().map(Practice::new);
    }

    private static Design practice(Design design, int footMm) {
        double roundsPerStitch = design.roundGauge().per100mm() / design.stitchGauge().per100mm();
        Size size = new Size("practice", Words.text("practice.size"),
                Map.of(Catalogue.FOOT_LENGTH.key(), Length.ofMm(footMm)), Map.of());
        return new Design(Words.text("practice.title", title(design)), design.direction(), over10cm(STITCHES),
                over10cm(Math.rint(STITCHES * roundsPerStitch)), design.toe(), heel(design.heel()),
                new StraightLeg(SockLength.QUARTER), design.cuff(), List.of(), Materials.UNDECIDED, Lengths.USUAL,
                List.of(size), List.of());
    }

    private static String title(Design design) {
        return design.title().isBlank() ? Words.text("untitled") : design.title();
    }

    private static Gauge over10cm(double count) {
        return new Gauge(count, new Length(10, LengthUnit.CENTIMETRE));
    }

    /** A flap of a height in mm was meant for larger feet. */
    private static Heel heel(Heel heel) {
        return switch (heel) {
            case FlapHeel flap -> flap.length() instanceof FlapLength.Height
                    ? new FlapHeel(flap.turn(), new FlapLength.FromBody(), flap.fabric(), flap.edge(),
                            flap.pickUp())
                    : flap;
            case ShortRowHeel shortRow -> shortRow;
            case AfterthoughtHeel afterthought -> afterthought;
        };
    }

    /** Where to stop, in the order of knitting. */
    List<Stage> stages() {
        return Stage.of(graded.design(), Rounds.of(graded, graded.sizes().getFirst()));
    }

    /** What a teacher hands out: what is needed, the stages, the written pattern with its drawings. */
    public Document document() {
        Design design = graded.design();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(Purpose.BODY, Words.text("practice.what")));
        blocks.add(new Block.Paragraph(Purpose.GAUGE, Words.text("practice.gauge",
                PartWords.stitchGauge(design.stitchGauge()), PartWords.roundGauge(design.roundGauge()))));
        blocks.add(new Block.Heading(1, Words.text("practice.stages")));
        blocks.add(new Block.Paragraph(Purpose.BODY, Words.text("practice.stages.how")));
        blocks.add(stageTable());
        blocks.add(new Block.NewPage());
        Document pattern = PatternDocument.of(graded, HouseStyles.usual(), Optional.empty());
        blocks.addAll(pattern.blocks());
        return new Document(pattern.title(), Words.text("practice.subject"), pattern.imprint(), blocks);
    }

    private Block.Table stageTable() {
        List<Block.Row> rows = new ArrayList<>();
        for (Stage stage : stages()) {
            rows.add(new Block.Row(List.of(new Block.Cell.Words(Integer.toString(rows.size() + 1)),
                    new Block.Cell.Words(stage.words()),
                    new Block.Cell.Words(FinderTable.rounds(stage.round(), stage.round())),
                    new Block.Cell.Figure(Integer.toString(stage.round().stitches())),
                    new Block.Cell.Words(PlaceText.of(stage.sign())), new Block.Cell.Blank())));
        }
        return new Block.Table(Words.text("practice.stages.caption"), List.of(Words.text("practice.stage"),
                Words.text("practice.until"), Words.text("practice.round"), Words.text("practice.needle"),
                Words.text("practice.lookFor"), Words.text("practice.done")), rows);
    }
}
