package turnheel.engine.writing;

import static turnheel.engine.writing.Phrase.filled;
import static turnheel.engine.writing.Phrase.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StitchPattern.Fit;
import turnheel.engine.design.StitchPattern.Zone;
import turnheel.engine.wording.Vocabulary;

/** What a knitter should know before a part: where its stitch pattern lies, and how the second sock differs. */
final class StitchPatternNotes {

    private final Design design;
    private final Counts counts;
    private final Vocabulary vocabulary;
    private final SortedSet<Integer> sizes;

    StitchPatternNotes(Design design, Counts counts, Vocabulary vocabulary) {
        this.design = design;
        this.counts = counts;
        this.vocabulary = vocabulary;
        this.sizes = counts.all(1).atLeast(1);
    }

    /** Of the toe: an asymmetric one is not the same on both feet. */
    List<List<Piece>> toe() {
        return design.toe() instanceof AsymmetricToe
                ? List.of(words(vocabulary.phrase("note.asymmetric." + design.direction()))) : List.of();
    }

    /** Of the instep. */
    List<List<Piece>> foot() {
        return design.stitchPattern(Zone.INSTEP).map(this::instep).orElse(List.of());
    }

    private List<List<Piece>> instep(StitchPattern pattern) {
        String key = "note.instep." + pattern.fit() + (pattern.edge() == 0 ? "" : ".edge");
        String phrase = pattern.edge() == 1 ? vocabulary.phraseOfOne(key) : vocabulary.phrase(key);
        List<List<Piece>> notes = new ArrayList<>();
        notes.add(filled(phrase, number(Catalogue.FOOT_INSTEP), number(Catalogue.FOOT_REPEATS),
                words(Integer.toString(pattern.repeat())), words(Integer.toString(pattern.edge())),
                number(Catalogue.FOOT_FILLER)));
        rows("note.rows.foot", Catalogue.FOOT_PATTERN_FIRST_ROW, Catalogue.FOOT_PATTERN_LAST_ROW,
                Catalogue.FOOT_PATTERN_REMAINDER).ifPresent(notes::add);
        return notes;
    }

    /** With which rows of its own a pattern begins and ends; nothing of a pattern of one row. */
    private Optional<List<Piece>> rows(String key, Parameter first, Parameter last, Parameter left) {
        if (counts.of(first).where(row -> true).isEmpty()) {
            return Optional.empty();
        }
        boolean some = counts.of(left).greatest() > 0;
        return Optional.of(filled(vocabulary.phrase(some ? key + ".left" : key), number(first), number(last),
                number(left)));
    }

    private List<Piece> number(Parameter parameter) {
        return counts.of(parameter).told(sizes).<List<Piece>>map(sized -> List.of(Piece.Values.of(sized)))
                .orElse(words("0"));
    }

    /** Of the leg. */
    List<List<Piece>> leg() {
        Optional<StitchPattern> found = design.stitchPattern(Zone.LEG);
        List<List<Piece>> notes = new ArrayList<>();
        found.ifPresent(pattern -> {
            String key = "note.leg." + pattern.fit();
            List<Piece> repeat = words(Integer.toString(pattern.repeat()));
            notes.add(pattern.fit() == Fit.WHOLE_REPEATS
                    ? filled(vocabulary.phrase(key), number(Catalogue.LEG_REPEATS), repeat)
                    : filled(vocabulary.phrase(key), words(Integer.toString(pattern.fewestFiller())), repeat));
            rows("note.rows.leg", Catalogue.LEG_PATTERN_FIRST_ROW, Catalogue.LEG_PATTERN_LAST_ROW,
                    Catalogue.LEG_PATTERN_REMAINDER).ifPresent(notes::add);
        });
        return notes;
    }
}
