package turnheel.engine.grading;

import static turnheel.engine.grading.NeedWords.format;

import java.util.Locale;
import java.util.stream.Collectors;

import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.grading.Relaxation.Change;
import turnheel.engine.term.Notation;

/** What is given up, in words; they are in {@code why.properties}. */
final class RelaxationWords {

    private RelaxationWords() {
    }

    static String of(Change change) {
        return switch (change) {
            case Change.CuffAdjusts() -> format("relaxation.cuff-adjusts");
            case Change.Edge(var zone, var was, var becomes) -> becomes == 0 ? format("relaxation.no-edge", zone(zone))
                    : format("relaxation.edge", zone(zone), was, becomes);
            case Change.Panel(var zone) -> format("relaxation.panel", zone(zone));
            case Change.LegFromAnkle() -> format("relaxation.leg-from-ankle");
            case Change.ToeLines(var was, var becomes) -> format("relaxation.toe-lines", was, becomes);
            case Change.OwnNumber(var parameter, var sizes) ->
                format("relaxation.own-number", parameter.label(), String.join(", ", sizes));
            case Change.Window(var percent, var counts) -> format("relaxation.window", Notation.number(percent),
                    counts.stream().map(own -> format("relaxation.own-count", own.size(), own.count()))
                            .collect(Collectors.joining(", ")));
        };
    }

    private static String zone(Zone zone) {
        return format("zone." + zone.name().toLowerCase(Locale.ROOT));
    }
}
