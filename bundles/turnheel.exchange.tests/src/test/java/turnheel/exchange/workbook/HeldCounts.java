package turnheel.exchange.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Size;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.Grader;
import turnheel.exchange.Designs;

/** What the engine says of a design with a changed input when the counts that it chose before are held. */
final class HeldCounts {

    private HeldCounts() {
    }

    /** The design with one more input in one size, graded with the foot stitches of {@code before} in every size. */
    static Graded grade(Graded before, int changedSize, String key, String quantity) {
        Design design = before.design();
        List<Size> sizes = new ArrayList<>();
        for (int i = 0; i < design.sizes().size(); i++) {
            long count = Math.round(before.sizes().get(i).value(Catalogue.FOOT_STITCHES));
            Map<String, String> change = i == changedSize ? Map.of(key, quantity) : Map.of();
            sizes.add(Designs.with(design.sizes().get(i), change, Map.of("foot.stitches", Long.toString(count))));
        }
        return Grader.grade(Designs.with(design, design.title(), sizes));
    }
}
