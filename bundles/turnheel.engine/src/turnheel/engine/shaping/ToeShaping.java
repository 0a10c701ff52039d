package turnheel.engine.shaping;

import static turnheel.engine.shaping.Needle.steps;
import static turnheel.engine.shaping.Needle.work;

import java.util.List;

import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Increase;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.Toe;
import turnheel.engine.design.TurnMethod;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.stitch.Stitch;

/** Toes, round by round: domain § 3. */
final class ToeShaping {

    private final Whole whole;

    ToeShaping(GradedSize size) {
        this.whole = new Whole(size);
    }

    List<Round> toeUp(Toe toe) {
        return switch (toe) {
            case RoundToe round -> round(round).toeUp(round.castOn());
            case WedgeToe wedge -> wedge(wedge.increase()).toeUp(wedge.castOn());
            case StarToe star -> star(star).toeUp(star.castOn(), foot());
            case AsymmetricToe asymmetric -> asymmetric(asymmetric.increase()).toeUp(asymmetric.castOn());
            case ShortRowToe shortRow -> shortRowToeUp(shortRow.turn());
        };
    }

    List<Round> cuffDown(Toe toe) {
        Needle needle = new Needle(foot());
        switch (toe) {
            case RoundToe round -> round(round).narrow(needle);
            case WedgeToe wedge -> wedge(wedge.increase()).narrow(needle);
            case StarToe star -> star(star).narrow(needle);
            case AsymmetricToe asymmetric -> asymmetric(asymmetric.increase()).narrow(needle);
            case ShortRowToe shortRow -> {
                return shortRowCuffDown(shortRow.turn());
            }
        }
        return needle.rounds();
    }

    private int foot() {
        return whole.count(Catalogue.FOOT_STITCHES);
    }

    private RoundTaperShaping round(RoundToe toe) {
        return new RoundTaperShaping(new Sections(toe.increase(), toe.lean(), whole.count(Catalogue.TOE_POINTS)),
                whole.count(Catalogue.TOE_CAST_ON), whole.count(Catalogue.TOE_EVERY_ROUND),
                whole.count(Catalogue.TOE_ALTERNATE), whole.count(Catalogue.TOE_PLAIN_BETWEEN));
    }

    private WedgeTaperShaping wedge(Increase increase) {
        return new WedgeTaperShaping(increase, whole.count(Catalogue.TOE_TIP), whole.count(Catalogue.TOE_EVERY_ROUND),
                whole.count(Catalogue.TOE_ALTERNATE));
    }

    private StarToeShaping star(StarToe toe) {
        return new StarToeShaping(new Sections(toe.increase(), toe.lean(), whole.count(Catalogue.TOE_POINTS)),
                whole.count(Catalogue.TOE_PLAIN_MOST), whole.count(Catalogue.TOE_SECTIONS_FROM));
    }

    private AsymmetricToeShaping asymmetric(Increase increase) {
        return new AsymmetricToeShaping(increase, whole.count(Catalogue.TOE_TIP),
                whole.count(Catalogue.TOE_EVERY_ROUND), whole.count(Catalogue.TOE_ALTERNATE),
                whole.count(Catalogue.TOE_SECOND_LINE_AFTER));
    }

    private ShortRows cup(TurnMethod turn) {
        return new ShortRows(turn, whole.count(Catalogue.TOE_STITCHES), whole.count(Catalogue.TOE_CENTRE),
                whole.count(Catalogue.TOE_EACH_SIDE));
    }

    private List<Round> shortRowToeUp(TurnMethod turn) {
        int stitches = whole.count(Catalogue.TOE_STITCHES);
        int other = foot() - stitches;
        Needle needle = new Needle(0);
        needle.unnumbered(RoundKind.CAST_ON, steps(work(Stitch.PROVISIONAL_CAST_ON, stitches)));
        cup(turn).workOn(needle);
        // a cast-on holds one loop fewer than it has stitches; the missing ones are picked up at the corner
        int freed = Math.min(other, stitches - 1);
        needle.unnumbered(RoundKind.PICK_UP, steps(work(Stitch.KNIT, stitches), work(Stitch.FREED_LOOP, freed),
                work(Stitch.PICK_UP_AND_KNIT, other - freed)));
        return needle.rounds();
    }

    private List<Round> shortRowCuffDown(TurnMethod turn) {
        int stitches = whole.count(Catalogue.TOE_STITCHES);
        int held = foot() - stitches;
        if (held != stitches) {
            throw new Whole.NotKnittable();
        }
        Needle needle = new Needle(stitches);
        cup(turn).workOn(needle);
        needle.join(held);
        needle.unnumbered(RoundKind.GRAFT, steps(work(Stitch.GRAFT, stitches)));
        return needle.rounds();
    }
}
