package turnheel.engine.design;

import static turnheel.engine.design.Unit.BALLS;
import static turnheel.engine.design.Unit.GRAMS;
import static turnheel.engine.design.Unit.IDEAL_STITCHES;
import static turnheel.engine.design.Unit.LINES;
import static turnheel.engine.design.Unit.LOOPS;
import static turnheel.engine.design.Unit.METRES;
import static turnheel.engine.design.Unit.MILLIMETRES;
import static turnheel.engine.design.Unit.PERCENT;
import static turnheel.engine.design.Unit.PER_100_MM;
import static turnheel.engine.design.Unit.PLAIN_LOOPS;
import static turnheel.engine.design.Unit.RATIO;
import static turnheel.engine.design.Unit.ROUNDS;
import static turnheel.engine.design.Unit.ROWS;
import static turnheel.engine.design.Unit.STITCHES;
import static turnheel.engine.design.Unit.TEX;
import static turnheel.engine.design.Unit.TIMES;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

import turnheel.engine.term.Key;

/**
 * Every number that a pattern can hold, in the order of every table. The grid, the workbook, the command line and the help
 * read this list; a parameter is added here, gets its words in {@code catalogue.properties} and its rule in
 * {@code grading}.
 */
public final class Catalogue {

    private static final Map<Key, Parameter> BY_KEY = new LinkedHashMap<>();

    public static final Parameter GAUGE_STITCHES = input("gauge.stitches", PER_100_MM, 4, 200);
    public static final Parameter GAUGE_ROUNDS = input("gauge.rounds", PER_100_MM, 4, 200);
    public static final Parameter GAUGE_INSTEP = input("gauge.instepStitches", PER_100_MM, 4, 200);
    public static final Parameter GAUGE_LEG = input("gauge.legStitches", PER_100_MM, 4, 200);
    public static final Parameter GAUGE_FLAP = input("gauge.flapRows", PER_100_MM, 4, 200);
    public static final Parameter GAUGE_CUFF = input("gauge.cuffRounds", PER_100_MM, 4, 200);

    public static final Parameter NEEDLE = input("gauge.needle", MILLIMETRES, 1, 30);

    public static final Parameter FOOT_LENGTH = input("body.footLength", MILLIMETRES, 60, 400);
    public static final Parameter FOOT_CIRCUMFERENCE = input("body.footCircumference", MILLIMETRES, 60, 500);
    public static final Parameter ANKLE_CIRCUMFERENCE = input("body.ankleCircumference", MILLIMETRES, 60, 500);
    public static final Parameter HEEL_CIRCUMFERENCE = input("body.heelCircumference", MILLIMETRES, 60, 700);
    public static final Parameter CALF_CIRCUMFERENCE = input("body.calfCircumference", MILLIMETRES, 80, 800);
    public static final Parameter CALF_HEIGHT = input("body.calfHeight", MILLIMETRES, 50, 600);
    public static final Parameter KNEE_CIRCUMFERENCE = input("body.kneeCircumference", MILLIMETRES, 80, 800);
    public static final Parameter LEG_HEIGHT = input("body.legHeight", MILLIMETRES, 10, 800);

    public static final Parameter EASE_AROUND = input("fit.easeAround", PERCENT, -40, 40);
    public static final Parameter EASE_LENGTH = input("fit.easeLength", MILLIMETRES, -60, 60);
    public static final Parameter WANTED_CIRCUMFERENCE = result("fit.circumference", MILLIMETRES);
    public static final Parameter WANTED_LENGTH = result("fit.length", MILLIMETRES);
    public static final Parameter EASE_REACHED = result("fit.easeReached", PERCENT);
    public static final Parameter STRETCH = result("fit.stretch", RATIO);

    public static final Parameter TOE_POINTS = rule("toe.points", LINES, 2, 12);
    public static final Parameter TOE_CAST_ON = rule("toe.castOn", STITCHES, 2, 200);
    public static final Parameter TOE_ALTERNATE_FROM = rule("toe.alternateFrom", STITCHES, 2, 1000);
    /** At least 8: a side of fewer than 4 has no room for two decreases and an edge stitch beside each. */
    public static final Parameter TOE_TIP = rule("toe.tip", STITCHES, 8, 500);
    public static final Parameter TOE_PLAIN_BETWEEN = rule("toe.plainBetween", ROUNDS, 1, 20);
    public static final Parameter TOE_PLAIN_MOST = rule("toe.plainMost", ROUNDS, 1, 20);
    public static final Parameter TOE_SECTIONS_FROM = result("toe.sectionsFrom", STITCHES);
    public static final Parameter TOE_SECOND_LINE_AFTER = rule("toe.secondLineAfter", TIMES, 0, 40);
    public static final Parameter TOE_STITCHES = rule("toe.stitches", STITCHES, 4, 500);
    public static final Parameter TOE_CENTRE = rule("toe.centre", STITCHES, 1, 500);
    public static final Parameter TOE_EACH_SIDE = result("toe.eachSide", STITCHES);
    public static final Parameter TOE_EVERY_ROUND = result("toe.everyRound", TIMES);
    public static final Parameter TOE_ALTERNATE = result("toe.alternate", TIMES);
    public static final Parameter TOE_ROUNDS = result("toe.rounds", ROUNDS);
    public static final Parameter TOE_DEPTH = result("toe.depth", MILLIMETRES);

    public static final Parameter FOOT_IDEAL = result("foot.ideal", IDEAL_STITCHES);
    public static final Parameter FOOT_STITCHES = rule("foot.stitches", STITCHES, 4, 1000);
    public static final Parameter FOOT_INSTEP = rule("foot.instep", STITCHES, 1, 1000);
    public static final Parameter FOOT_SOLE = result("foot.sole", STITCHES);
    public static final Parameter FOOT_REPEATS = rule("foot.repeats", TIMES, 0, 200);
    public static final Parameter FOOT_PANEL = result("foot.panel", STITCHES);
    public static final Parameter FOOT_FILLER = result("foot.filler", STITCHES);
    public static final Parameter FINISHED_CIRCUMFERENCE = result("foot.circumference", MILLIMETRES);
    public static final Parameter FOOT_ROUNDS = rule("foot.rounds", ROUNDS, 0, 2000);
    public static final Parameter FOOT_FEWEST = result("foot.fewestRounds", ROUNDS);
    public static final Parameter FOOT_EVEN_ROUNDS = result("foot.evenRounds", ROUNDS);
    public static final Parameter FOOT_MEASURE = rule("foot.measure", MILLIMETRES, 0, 600);
    public static final Parameter FOOT_TO_FIT_LESS = result("foot.toFitLess", MILLIMETRES);
    public static final Parameter FOOT_PATTERN_FIRST_ROW = result("foot.patternFirstRow", ROWS);
    public static final Parameter FOOT_PATTERN_LAST_ROW = result("foot.patternLastRow", ROWS);
    public static final Parameter FOOT_PATTERN_REMAINDER = result("foot.patternRemainder", ROUNDS);
    public static final Parameter FOOT_PATTERN_REMAINDER_LENGTH = result("foot.patternRemainderLength", MILLIMETRES);
    public static final Parameter FINISHED_LENGTH = result("foot.length", MILLIMETRES);
    public static final Parameter LENGTH_REST = result("foot.lengthRest", MILLIMETRES);

    public static final Parameter HEEL_STITCHES = rule("heel.stitches", STITCHES, 4, 500);
    public static final Parameter HEEL_CENTRE = rule("heel.centre", STITCHES, 1, 500);
    public static final Parameter HEEL_EACH_SIDE = result("heel.eachSide", STITCHES);
    public static final Parameter HEEL_GUSSET_INCREASES = rule("heel.gussetIncreases", TIMES, 0, 200);
    public static final Parameter HEEL_WIDEST = result("heel.widest", STITCHES);
    public static final Parameter HEEL_FLAP_ROWS = rule("heel.flapRows", ROWS, 2, 400);
    public static final Parameter HEEL_TURN_OFFSET = rule("heel.turnOffset", STITCHES, 0, 50);
    public static final Parameter HEEL_TURN_ROWS = result("heel.turnRows", ROWS);
    public static final Parameter HEEL_AFTER_TURN = result("heel.afterTurn", STITCHES);
    public static final Parameter HEEL_CORNER = rule("heel.corner", STITCHES, 0, 12);
    public static final Parameter HEEL_PICK_UP = rule("heel.pickUp", STITCHES, 0, 300);
    public static final Parameter HEEL_AFTER_PICK_UP = result("heel.afterPickUp", STITCHES);
    public static final Parameter HEEL_GUSSET_DECREASES = result("heel.gussetDecreases", TIMES);
    public static final Parameter HEEL_POINTS = rule("heel.points", LINES, 2, 12);
    public static final Parameter HEEL_TIP = rule("heel.tip", STITCHES, 2, 500);
    public static final Parameter HEEL_ALTERNATE_FROM = rule("heel.alternateFrom", STITCHES, 2, 1000);
    public static final Parameter HEEL_PLAIN_BETWEEN = rule("heel.plainBetween", ROUNDS, 1, 20);
    public static final Parameter HEEL_EVERY_ROUND = result("heel.everyRound", TIMES);
    public static final Parameter HEEL_ALTERNATE = result("heel.alternate", TIMES);
    public static final Parameter HEEL_ROWS = result("heel.rows", ROWS);
    public static final Parameter HEEL_DEPTH = result("heel.depth", MILLIMETRES);
    public static final Parameter HEEL_HEIGHT = result("heel.height", MILLIMETRES);

    public static final Parameter LEG_STITCHES = rule("leg.stitches", STITCHES, 4, 1000);
    public static final Parameter LEG_REPEATS = result("leg.repeats", TIMES);
    public static final Parameter LEG_CALF = rule("leg.calfStitches", STITCHES, 4, 1000);
    public static final Parameter LEG_INCREASES = result("leg.increases", TIMES);
    public static final Parameter LEG_INCREASE_OVER = rule("leg.increaseOver", ROUNDS, 1, 2000);
    public static final Parameter LEG_TOP = rule("leg.topStitches", STITCHES, 4, 1000);
    public static final Parameter LEG_DECREASES = result("leg.decreases", TIMES);
    public static final Parameter LEG_DECREASE_OVER = rule("leg.decreaseOver", ROUNDS, 1, 2000);
    public static final Parameter LEG_ROUNDS = rule("leg.rounds", ROUNDS, 0, 3000);
    public static final Parameter LEG_EVEN_ROUNDS = result("leg.evenRounds", ROUNDS);
    public static final Parameter LEG_MEASURE = rule("leg.measure", MILLIMETRES, 0, 1000);
    public static final Parameter LEG_PATTERN_FIRST_ROW = result("leg.patternFirstRow", ROWS);
    public static final Parameter LEG_PATTERN_LAST_ROW = result("leg.patternLastRow", ROWS);
    public static final Parameter LEG_PATTERN_REMAINDER = result("leg.patternRemainder", ROUNDS);
    public static final Parameter LEG_PATTERN_REMAINDER_LENGTH = result("leg.patternRemainderLength", MILLIMETRES);

    public static final Parameter CUFF_HEIGHT = rule("cuff.height", MILLIMETRES, 5, 400);
    public static final Parameter CUFF_STITCHES = rule("cuff.stitches", STITCHES, 4, 1000);
    public static final Parameter CUFF_ROUNDS = rule("cuff.rounds", ROUNDS, 1, 1000);

    public static final Parameter YARN_LOOPS = result("yarn.loops", LOOPS);
    public static final Parameter YARN_PLAIN_LOOPS = result("yarn.plainLoops", PLAIN_LOOPS);
    public static final Parameter YARN_TOE_LOOPS = result("yarn.toeLoops", PLAIN_LOOPS);
    public static final Parameter YARN_FOOT_LOOPS = result("yarn.footLoops", PLAIN_LOOPS);
    public static final Parameter YARN_HEEL_LOOPS = result("yarn.heelLoops", PLAIN_LOOPS);
    public static final Parameter YARN_LEG_LOOPS = result("yarn.legLoops", PLAIN_LOOPS);
    public static final Parameter YARN_CUFF_LOOPS = result("yarn.cuffLoops", PLAIN_LOOPS);
    public static final Parameter YARN_FLOATS = result("yarn.floats", PLAIN_LOOPS);
    public static final Parameter YARN_LOOP_LENGTH = result("yarn.loopLength", MILLIMETRES);
    public static final Parameter YARN_SOCK_METRES = result("yarn.sockMetres", METRES);
    public static final Parameter YARN_METRES = result("yarn.metres", METRES);
    public static final Parameter YARN_TEX = result("yarn.tex", TEX);
    public static final Parameter YARN_SOCK_GRAMS = result("yarn.sockGrams", GRAMS);
    public static final Parameter YARN_GRAMS = result("yarn.grams", GRAMS);
    public static final Parameter YARN_BALLS = result("yarn.balls", BALLS);

    /** The rows of each yarn where there are several, those of the main yarn first. */
    public static final List<YarnRows> YARN_COLOURS = IntStream.rangeClosed(1, Materials.MOST_YARNS)
            .mapToObj(Catalogue::yarnRows).toList();

    private static final List<Parameter> ALL = List.copyOf(BY_KEY.values());

    private Catalogue() {
    }

    /** All parameters, in the order of every table. */
    public static List<Parameter> all() {
        return ALL;
    }

    /**
     * The parameter of this key.
     *
     * @throws IllegalArgumentException when there is none; the message suggests the nearest key
     */
    public static Parameter parameter(Key key) {
        Parameter parameter = BY_KEY.get(key);
        if (parameter == null) {
            throw new IllegalArgumentException("there is no \"%s\"; did you mean %s?".formatted(key,
                    nearestKey(key.name())));
        }
        return parameter;
    }

    /** The key that a mistyped one most likely meant. */
    public static Key nearestKey(String mistyped) {
        return new Key(Spelling.nearest(mistyped, ALL.stream().map(parameter -> parameter.key().name()).toList()));
    }

    private static Parameter input(String name, Unit unit, double least, double most) {
        return add(name, Role.INPUT, unit, least, most);
    }

    private static Parameter rule(String name, Unit unit, double least, double most) {
        return add(name, Role.RULE, unit, least, most);
    }

    private static Parameter result(String name, Unit unit) {
        return add(name, Role.RESULT, unit, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    private static YarnRows yarnRows(int number) {
        return new YarnRows(ofYarn(number, "Loops", PLAIN_LOOPS), ofYarn(number, "SockMetres", METRES),
                ofYarn(number, "Metres", METRES), ofYarn(number, "SockGrams", GRAMS), ofYarn(number, "Grams", GRAMS),
                ofYarn(number, "Balls", BALLS));
    }

    /** {@code yarn.colour2Metres}; the words are those of {@code yarn.colourMetres} for every number. */
    private static Parameter ofYarn(int number, String what, Unit unit) {
        Key words = new Key("yarn.colour" + what);
        return put(new Key("yarn.colour" + number + what), Role.RESULT, unit, Double.NEGATIVE_INFINITY,
                Double.POSITIVE_INFINITY, CatalogueWords.label(words, number), CatalogueWords.description(words, number));
    }

    private static Parameter add(String name, Role role, Unit unit, double least, double most) {
        Key key = new Key(name);
        return put(key, role, unit, least, most, CatalogueWords.label(key), CatalogueWords.description(key));
    }

    private static Parameter put(Key key, Role role, Unit unit, double least, double most, String label,
            String description) {
        Part part = Part.valueOf(key.part().toUpperCase(Locale.ROOT));
        Parameter parameter = new Parameter(key, part, role, unit, least, most, label, description);
        BY_KEY.put(key, parameter);
        return parameter;
    }
}
