package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Line;

/** What was knitted, by the sections of a text: how wide and how long the foot came out. */
final class Worked {

    private final List<Told> told;
    private final List<List<Traced>> traces;
    private final List<Boolean> sound;
    private final ReadingWords table;
    /** For each line the title that it stands under, and the line of that title. */
    private final List<String> sections = new ArrayList<>();
    private final int[] sectionStarts;
    /** For each size the rounds worked before each line. */
    private final List<int[]> untilLine;

    /** @param sound for each size, whether its rounds are those that the text means */
    Worked(List<Told> told, List<List<Traced>> traces, List<Boolean> sound, ReadingWords table) {
        this.told = told;
        this.traces = traces;
        this.sound = sound;
        sectionStarts = new int[told.size()];
        String section = "";
        for (int line = 0; line < told.size(); line++) {
            boolean begins = told.get(line).line() instanceof Line.Section;
            section = told.get(line).line() instanceof Line.Section(var title) ? title.toLowerCase(Locale.ROOT) : section;
            sections.add(section);
            sectionStarts[line] = begins || line == 0 ? line : sectionStarts[line - 1];
        }
        untilLine = traces.stream().map(this::untilLine).toList();
        this.table = table;
    }

    /**
     * Stitches at the end of a part; NaN where no section is called so.
     *
     * @param part the name of its list of words
     */
    double stitches(String part, int size) {
        double stitches = Double.NaN;
        for (Traced traced : traces.get(size)) {
            boolean round = traced.stitches() > 0 && traced.onHold() == 0 && traced.openYarnOvers() == 0;
            if (round && isIn(part, section(traced.line()))) {
                stitches = traced.stitches();
            }
        }
        return stitches;
    }

    /**
     * Rounds along the foot: those of toe, foot and gusset, the rows of a heel's turn, and half of the rows of short-row cups.
     * NaN where a stretch is measured instead of counted, where a part of the foot is missing, and where flap and turn of a
     * heel stand in one section or the flap is worked after the gusset.
     */
    double footRounds(int size) {
        if (!sound.get(size) || picksUpAlongFlap() && !isIn("heel-turn", String.join(" ", titles())) || isFlapToeUp()) {
            return Double.NaN;
        }
        double rounds = 0;
        boolean toe = false;
        boolean foot = false;
        boolean heel = false;
        for (Traced traced : traces.get(size)) {
            String section = section(traced.line());
            toe |= isIn("part-toe", section);
            foot |= isIn("part-foot", section);
            heel |= isIn("part-heel", section);
            if (isIn("along-foot", section) && !isIn("flap", section)) {
                if (told.get(traced.line()).line() instanceof Line.Even even && even.rounds().isEmpty()) {
                    return Double.NaN;
                }
                rounds += isFlatCup(traced.line(), section) ? traced.rounds() / 2.0 : traced.rounds();
            }
        }
        return toe && foot && heel ? rounds : Double.NaN;
    }

    private List<String> titles() {
        return told.stream().map(Told::line).filter(line -> line instanceof Line.Section)
                .map(line -> ((Line.Section) line).title().toLowerCase(Locale.ROOT)).toList();
    }

    private boolean isFlapToeUp() {
        String titles = String.join(" ", titles());
        int flap = titles.indexOf("flap");
        int toe = titles.indexOf("toe");
        return 0 <= toe && toe < flap;
    }

    private boolean picksUpAlongFlap() {
        return told.stream().map(Told::line).anyMatch(line -> line instanceof Line.Worked worked && worked.instructions()
                .stream().anyMatch(instruction -> instruction instanceof Instruction.PickUp));
    }

    /** A flat part of toe or heel folds to a cup, unless it only turns a flap. */
    private boolean isFlatCup(int line, String section) {
        return !isIn("heel-turn", section) && isFlat(told.get(line).line());
    }

    private static boolean isFlat(Line line) {
        return switch (line) {
            case Line.Worked worked -> worked.label().filter(label -> label.fabric() == Line.Fabric.ROW).isPresent();
            case Line.Even even -> even.fabric() == Line.Fabric.ROW;
            case Line.RepeatRounds repeat -> switch (repeat.target()) {
                case Line.Target.Numbered numbered -> numbered.fabric() == Line.Fabric.ROW;
                case Line.Target.LastRounds last -> last.fabric() == Line.Fabric.ROW;
                case Line.Target.Named named -> false;
            };
            case Line.Section section -> false;
        };
    }

    /** Rounds that a size has worked up to a line, since the piece began or since the section did; rows count half. */
    int roundsBefore(int size, int line, boolean sinceSection) {
        int[] until = untilLine.get(size);
        return until[line] - (sinceSection ? until[sectionStarts[line]] : 0);
    }

    private int[] untilLine(List<Traced> trace) {
        int[] until = new int[told.size() + 1];
        for (Traced traced : trace) {
            boolean rows = isFlat(told.get(traced.line()).line());
            until[traced.line() + 1] += rows ? traced.rounds() / 2 : traced.rounds();
        }
        for (int line = 0; line < told.size(); line++) {
            until[line + 1] += until[line];
        }
        return until;
    }

    /** The title of the section that a line stands in, in small letters. */
    String section(int line) {
        return sections.get(line);
    }

    private boolean isIn(String list, String words) {
        return table.list(list).stream().anyMatch(words::contains);
    }
}
