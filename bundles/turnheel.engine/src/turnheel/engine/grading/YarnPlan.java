package turnheel.engine.grading;

import static turnheel.engine.design.Catalogue.FOOT_PANEL;
import static turnheel.engine.design.Catalogue.FOOT_PATTERN_REMAINDER;
import static turnheel.engine.design.Catalogue.FOOT_ROUNDS;
import static turnheel.engine.design.Catalogue.LEG_PATTERN_REMAINDER;
import static turnheel.engine.design.Catalogue.LEG_ROUNDS;
import static turnheel.engine.design.Catalogue.YARN_CUFF_LOOPS;
import static turnheel.engine.design.Catalogue.YARN_FOOT_LOOPS;
import static turnheel.engine.design.Catalogue.YARN_HEEL_LOOPS;
import static turnheel.engine.design.Catalogue.YARN_LEG_LOOPS;
import static turnheel.engine.design.Catalogue.YARN_TOE_LOOPS;
import static turnheel.engine.term.Terms.dividedBy;
import static turnheel.engine.term.Terms.greatest;
import static turnheel.engine.term.Terms.minus;
import static turnheel.engine.term.Terms.number;
import static turnheel.engine.term.Terms.plus;
import static turnheel.engine.term.Terms.times;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.ColourPlace;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.Heel;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Part;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.term.Term;

/**
 * Which yarn is worked where, and how much of a part's loops each takes. Yarns are counted from 1, the main yarn; a
 * design without yarns is worked in a single unknown one.
 */
public final class YarnPlan {

    /**
     * Yarn across the width of one stitch, in loops: 1 / Kw, with Kw = 4.1 of wet relaxed plain knitting (Munden 1959,
     * reference table of knit geometry), since stitches are loop length / Kw wide. A float is as long as the stitches
     * that it passes are wide, so a stranded stitch takes 1.244 loops of both yarns together.
     */
    public static final double STITCH_WIDTH = 1 / 4.1;

    /** Of the stitches of a stranded pattern, those in its second colour: <em>common practice</em>, for want of a chart. */
    private static final double FIGURES = 0.5;

    private static final Map<Part, Parameter> LOOPS_OF_PART = Map.of(Part.TOE, YARN_TOE_LOOPS, Part.FOOT, YARN_FOOT_LOOPS,
            Part.HEEL, YARN_HEEL_LOOPS, Part.LEG, YARN_LEG_LOOPS, Part.CUFF, YARN_CUFF_LOOPS);

    private static final Term NONE = number(0);

    private final Design design;
    private final Materials materials;

    private YarnPlan(Design design) {
        this.design = design;
        this.materials = design.materials();
    }

    public static YarnPlan of(Design design) {
        return new YarnPlan(design);
    }

    /** Whether anything of a part is knitted. */
    public static boolean isKnitted(Part part) {
        return LOOPS_OF_PART.containsKey(part);
    }

    /**
     * The row that counts a part.
     *
     * @throws IllegalArgumentException when nothing of the part is knitted
     */
    public static Parameter loopsOf(Part part) {
        Parameter loops = LOOPS_OF_PART.get(part);
        if (loops == null) {
            throw new IllegalArgumentException("nothing of %s is knitted".formatted(part));
        }
        return loops;
    }

    /** The rows that count the parts. */
    static List<Parameter> loopsOfParts() {
        return Catalogue.all().stream().filter(LOOPS_OF_PART::containsValue).toList();
    }

    /** How many yarns there are; one even where none is chosen. */
    public int yarns() {
        return Math.max(1, materials.yarns().size());
    }

    /** Whether the loops of each part matter: with several yarns, or where one is carried along. */
    public boolean needsParts() {
        return yarns() > 1 || isStranded(Part.FOOT) || isStranded(Part.LEG);
    }

    /** The yarn of a part: of a stranded one that of its ground, and under a pattern all round that of the pattern. */
    public int yarn(Part part) {
        OptionalInt ofPattern = isStranded(part) || isOnInstepAlone(part) ? OptionalInt.empty() : ofPattern(part);
        return ofPattern.orElseGet(() -> materials.colour(place(part)).orElse(1));
    }

    private static ColourPlace place(Part part) {
        return switch (part) {
            case TOE -> ColourPlace.TOE;
            case FOOT -> ColourPlace.FOOT;
            case HEEL -> ColourPlace.HEEL;
            case LEG -> ColourPlace.LEG;
            case CUFF -> ColourPlace.CUFF;
            case GAUGE, BODY, FIT, YARN, OWN ->
                throw new IllegalArgumentException("nothing of %s is knitted".formatted(part));
        };
    }

    /** Whether two yarns run around the part. */
    public boolean isStranded(Part part) {
        return pattern(part).filter(pattern -> pattern.stranding().isPresent()).isPresent();
    }

    /** The yarn that is worked beside that of the part; of a stranded part the second yarn where nobody named one. */
    private OptionalInt second(Part part) {
        if (isStranded(part)) {
            return OptionalInt.of(ofPattern(part).orElse(Math.min(2, yarns())));
        }
        return isOnInstepAlone(part) ? ofPattern(part) : OptionalInt.empty();
    }

    /** The yarn that somebody named for the stitch pattern of a part. */
    private OptionalInt ofPattern(Part part) {
        return pattern(part).isEmpty() ? OptionalInt.empty()
                : materials.colour(part == Part.FOOT ? ColourPlace.INSTEP_PATTERN : ColourPlace.LEG_PATTERN);
    }

    private boolean isOnInstepAlone(Part part) {
        return part == Part.FOOT && pattern(part).filter(pattern -> pattern.zone() == Zone.INSTEP).isPresent();
    }

    private Optional<StitchPattern> pattern(Part part) {
        return switch (part) {
            case FOOT -> design.stitchPattern(Zone.INSTEP);
            case LEG -> design.stitchPattern(Zone.LEG);
            case GAUGE, BODY, FIT, TOE, HEEL, CUFF, YARN, OWN -> Optional.empty();
        };
    }

    /** What a yarn takes in the whole sock, in plain loops, floats included. */
    Term loops(int yarn) {
        return inOrder().stream().map(part -> loops(part, yarn)).filter(term -> !term.equals(NONE))
                .reduce((one, other) -> plus(one, other)).orElse(NONE);
    }

    /**
     * What a yarn takes in a part, in plain loops, floats included. It reads the part's loops and, where a stitch
     * pattern lies on the instep alone or ends with whole repeats, its stitches and rounds.
     */
    public Term loops(Part part, int yarn) {
        OptionalInt second = second(part);
        if (second.isEmpty()) {
            return yarn == yarn(part) ? loopsOf(part).term() : NONE;
        }
        Term figures = isStranded(part) ? times(number(FIGURES), patternLoops(part)) : patternLoops(part);
        Term ground = minus(loopsOf(part).term(), figures);
        Term ofFirst = isStranded(part) ? plus(ground, times(number(STITCH_WIDTH), figures)) : ground;
        Term ofSecond = isStranded(part)
                ? plus(figures, times(number(STITCH_WIDTH), minus(strandedLoops(part), figures))) : figures;
        if (yarn == yarn(part)) {
            return yarn == second.getAsInt() ? plus(ofFirst, ofSecond) : ofFirst;
        }
        return yarn == second.getAsInt() ? ofSecond : NONE;
    }

    private Term patternLoops(Part part) {
        return isOnInstepAlone(part)
                ? times(FOOT_PANEL.term(), leftOver(part).map(rest -> minus(FOOT_ROUNDS.term(), rest))
                        .orElseGet(FOOT_ROUNDS::term))
                : strandedLoops(part);
    }

    /** The loops of the rounds with a pattern, without those left over after whole repeats; rounds taken as alike. */
    private Term strandedLoops(Part part) {
        Term all = loopsOf(part).term();
        Term rounds = (part == Part.FOOT ? FOOT_ROUNDS : LEG_ROUNDS).term();
        return leftOver(part).map(rest -> minus(all, dividedBy(times(all, rest), greatest(number(1), rounds))))
                .orElse(all);
    }

    private Optional<Term> leftOver(Part part) {
        boolean snapped = part == Part.FOOT ? design.lengths().snap().foot() : design.lengths().snap().leg();
        return pattern(part).filter(pattern -> snapped && pattern.rows() > 1)
                .map(pattern -> (part == Part.FOOT ? FOOT_PATTERN_REMAINDER : LEG_PATTERN_REMAINDER).term());
    }

    /**
     * What lies behind the stitches of stranded parts, in plain loops; the yarn that is not knitted runs around with the
     * other.
     */
    Optional<Term> floats() {
        return inOrder().stream().filter(this::isStranded)
                .map(part -> times(number(STITCH_WIDTH), strandedLoops(part)))
                .reduce((one, other) -> plus(one, other));
    }

    /**
     * Metres of a yarn in a part of one sock, without ends and margin; empty where the part takes none of it. It
     * reads the part's loops, be they a row of the pattern or not, and the length of a loop.
     */
    public Optional<Term> metres(Part part, int yarn) {
        return Optional.of(loops(part, yarn)).filter(loops -> !loops.equals(NONE)).map(YarnRules::metresOfLoops);
    }

    /** Metres of a yarn in the ends that are woven in on one sock. */
    public Term metresOfEnds(int yarn) {
        return YarnRules.metresOfEnds(ends(yarn));
    }

    /** The ends of a yarn in a sock: it is begun and ended wherever another comes between. */
    int ends(int yarn) {
        return runs(yarn).stream().mapToInt(run -> 2).sum();
    }

    /** The ends of a yarn that are still to come when {@code part} is about to be begun. */
    public int endsFrom(Part part, int yarn) {
        int begun = inOrder().indexOf(part);
        return runs(yarn).stream().filter(run -> run.last() >= begun).mapToInt(run -> run.first() < begun ? 1 : 2).sum();
    }

    /** Parts without a break of the yarn, by their places in the order of knitting. */
    private record Run(int first, int last) {
    }

    private List<Run> runs(int yarn) {
        List<Run> runs = new ArrayList<>();
        addRuns(part -> yarn(part) == yarn, runs);
        addRuns(part -> second(part).orElse(0) == yarn, runs);
        return runs;
    }

    private void addRuns(Function<Part, Boolean> isWorked, List<Run> runs) {
        List<Part> parts = inOrder();
        int first = -1;
        for (int i = 0; i < parts.size(); i++) {
            boolean goesOn = isWorked.apply(parts.get(i)) && !beginsAnew(parts.get(i));
            if (first >= 0 && !goesOn) {
                runs.add(new Run(first, i - 1));
                first = -1;
            }
            if (first < 0 && isWorked.apply(parts.get(i))) {
                first = i;
            }
        }
        if (first >= 0) {
            runs.add(new Run(first, parts.size() - 1));
        }
    }

    private boolean beginsAnew(Part part) {
        return part == Part.HEEL && isWorkedLast(design.heel());
    }

    private List<Part> inOrder() {
        List<Part> parts = new ArrayList<>(List.of(Part.TOE, Part.FOOT, Part.HEEL, Part.LEG, Part.CUFF));
        if (design.direction() == Direction.CUFF_DOWN) {
            Collections.reverse(parts);
        }
        if (isWorkedLast(design.heel())) {
            parts.remove(Part.HEEL);
            parts.add(Part.HEEL);
        }
        return parts;
    }

    private static boolean isWorkedLast(Heel heel) {
        return switch (heel) {
            case ShortRowHeel worked -> false;
            case FlapHeel worked -> false;
            case AfterthoughtHeel worked -> true;
        };
    }
}
