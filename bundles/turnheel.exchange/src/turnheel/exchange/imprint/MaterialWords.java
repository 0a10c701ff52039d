package turnheel.exchange.imprint;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import turnheel.engine.design.ColourPlace;
import turnheel.engine.design.Length;
import turnheel.engine.design.Materials;
import turnheel.engine.design.Swatch;
import turnheel.engine.design.YarnLine;
import turnheel.engine.term.Notation;
import turnheel.engine.yarn.Categories;
import turnheel.engine.yarn.Needles;

/** What a pair is made of, in words. */
public final class MaterialWords {

    private MaterialWords() {
    }

    /** A yarn by its label, its colour and what the pattern states of it. */
    public static String yarn(YarnLine line) {
        List<String> facts = new ArrayList<>(List.of(line.yarn().name(), line.colour()));
        facts.removeIf(String::isBlank);
        facts.add(Words.text("yarn.ball", Notation.number(line.yarn().metresPerBall()),
                Notation.number(line.yarn().gramsPerBall())));
        line.yarn().category().ifPresent(category -> facts.add(
                Words.text("yarn.category", Integer.toString(category), Categories.name(category))));
        line.balls().ifPresent(balls -> facts.add(Words.text("yarn.balls", Integer.toString(balls))));
        return String.join(", ", facts);
    }

    /**
     * What is worked in another yarn than the main one.
     *
     * @return empty where nothing is
     */
    public static String colours(Materials materials) {
        return String.join("; ", materials.colours().entrySet().stream().map(MaterialWords::colour).toList());
    }

    private static String colour(Map.Entry<ColourPlace, Integer> colour) {
        return Words.text("colour", Words.text("place." + colour.getKey().name()), Integer.toString(colour.getValue()));
    }

    /** A needle in mm, with its US number where makers agree on one. */
    public static String needle(Length diameter) {
        return Needles.usNumber(diameter).map(us -> Words.text("needle.us", Notation.number(diameter.mm()), us))
                .orElseGet(() -> Words.text("needle", Notation.number(diameter.mm())));
    }

    /** A swatch as it was recorded. */
    public static String swatch(Swatch swatch) {
        List<String> facts = new ArrayList<>();
        facts.add(Words.text("swatch.counts", Integer.toString(swatch.stitches()), Integer.toString(swatch.rounds())));
        swatch.measured().ifPresent(size -> facts.add(
                Words.text("swatch.measured", size.width().toString(), size.height().toString())));
        swatch.grams().ifPresent(grams -> facts.add(Words.text("swatch.weighed", Notation.number(grams))));
        facts.add(Words.text("swatch." + swatch.worked().name()));
        facts.add(Words.text(swatch.washed() ? "swatch.washed" : "swatch.unwashed"));
        return String.join(", ", facts);
    }
}
