package turnheel.exchange.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import turnheel.engine.design.Design;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Role;
import turnheel.engine.design.Size;
import turnheel.engine.grading.Graded;
import turnheel.engine.grading.GradedSize;
import turnheel.engine.grading.Grader;
import turnheel.engine.grading.LoopGrader;
import turnheel.engine.grading.Reason;
import turnheel.engine.grading.Source;
import turnheel.engine.term.Notation;
import turnheel.exchange.Designs;

/** What the engine says of a design with a changed input when the counts that it chose before are held. */
final class HeldCounts {

    private HeldCounts() {
    }

    /** The design with one more input in one size, graded with the chosen counts and loops of {@code before} in every size. */
    static Graded grade(Graded before, int changedSize, String key, String quantity) {
        Design design = before.design();
        List<Size> sizes = new ArrayList<>();
        for (int i = 0; i < design.sizes().size(); i++) {
            Map<String, String> change = i == changedSize ? Map.of(key, quantity) : Map.of();
            sizes.add(Designs.with(design.sizes().get(i), change, chosen(before, before.sizes().get(i))));
        }
        return LoopGrader.grade(Grader.grade(Designs.with(design, design.title(), sizes)),
                size -> counted(before, before.size(size.label())));
    }

    private static Map<Parameter, Reason.Counted> counted(Graded before, GradedSize size) {
        Map<Parameter, Reason.Counted> counted = new LinkedHashMap<>();
        for (Parameter parameter : before.parameters()) {
            size.cell(parameter).ifPresent(cell -> {
                if (cell.reason() instanceof Reason.Counted reason) {
                    counted.put(parameter, reason);
                }
            });
        }
        return counted;
    }

    private static Map<String, String> chosen(Graded before, GradedSize size) {
        return before.parameters().stream().filter(parameter -> parameter.role() == Role.RULE).flatMap(parameter -> size.cell(parameter).stream())
                .filter(cell -> cell.source() == Source.CHOSEN)
                .collect(Collectors.toMap(cell -> cell.key().name(), cell -> Notation.number(cell.value())));
    }
}
