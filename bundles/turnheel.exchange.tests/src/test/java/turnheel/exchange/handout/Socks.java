package turnheel.exchange.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import turnheel.engine.checks.Checks;
import turnheel.engine.design.Cuff;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Heel;
import turnheel.engine.design.Toe;
import turnheel.engine.fixture.Designs;
import turnheel.engine.fixture.Draft;
import turnheel.engine.grading.Graded;
import turnheel.engine.query.Severity;

/** Socks of every construction in both directions, and what is read off a table of rounds. */
final class Socks {

    private Socks() {
    }

    /**
     * Every toe with the first heel, every heel with the first toe, every cuff, each in both directions and six sizes.
     */
    static Stream<Draft> ofEveryKind() {
        List<Draft> drafts = new ArrayList<>();
        for (Direction direction : Direction.values()) {
            Draft plain = Designs.toeUpInSixSizes().with(direction);
            for (Toe toe : Designs.EVERY_TOE) {
                drafts.add(plain.with(toe));
            }
            for (Heel heel : Designs.EVERY_HEEL) {
                drafts.add(plain.with(heel));
            }
            for (Cuff cuff : Designs.EVERY_CUFF) {
                drafts.add(plain.with(cuff));
            }
        }
        return drafts.stream();
    }

    /** Whether it can be knitted in every size. */
    static boolean isSound(Graded graded) {
        return Checks.of(graded).stream().noneMatch(query -> query.severity() == Severity.ERROR);
    }
}
