package turnheel.engine.writing;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.Design;
import turnheel.engine.grading.Graded;
import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.HouseStyle.Needles;
import turnheel.engine.wording.Vocabulary;

/** Writes patterns. */
public final class Manuscripts {

    private Manuscripts() {
    }

    /**
     * The complete pattern for all sizes. A size of which some part's numbers do not work out has dashes in its
     * instructions, and a note says so; the checks say why.
     */
    public static PatternText write(Graded graded, HouseStyle style) {
        Vocabulary vocabulary = Vocabulary.of(style);
        Design design = graded.design();
        Counts counts = new Counts(graded);
        List<Content> contents = new ArrayList<>(new FrontMatter(graded, style, vocabulary).contents());
        contents.add(new Content.Abbreviations());
        contents.add(heading(vocabulary, "heading.notes"));
        notes(design, counts, vocabulary, style.needles()).forEach(note -> contents.add(new Content.Prose(Role.NOTE,
                Phrase.words(note))));
        design.stitchPatterns().forEach(pattern -> contents.addAll(PatternRowsWriting.of(pattern, vocabulary)));
        for (Chapter chapter : chapters(design, counts, vocabulary, style.needles())) {
            contents.add(heading(vocabulary, chapter.heading()));
            chapter.notes().forEach(note -> contents.add(new Content.Prose(Role.NOTE, note)));
            chapter.lines().forEach(line -> contents.add(new Content.Told(line)));
        }
        contents.add(heading(vocabulary, "heading.finishing"));
        contents.add(new Content.Prose(Role.NOTE, Phrase.words(vocabulary.phrase("finishing.ends"))));
        contents.add(heading(vocabulary, "heading.cautions"));
        Caution.of(graded).forEach(caution ->
                contents.add(new Content.Prose(Role.CAUTION, Phrase.words(FrontMatter.oneLine(caution.sentence())))));
        return new PatternText(style, graded.sizes().stream().map(size -> size.label()).toList(), contents);
    }

    /** The instructions alone, chapter by chapter, as values. */
    static List<Chapter> chapters(Design design, Counts counts, Vocabulary vocabulary, Needles needles) {
        if (counts.all(1).atLeast(1).isEmpty()) {
            return List.of();
        }
        return new SockWriting(design, counts, Names.of(vocabulary), new StitchPatternNotes(design, counts, vocabulary),
                new NeedleNotes(counts, vocabulary, needles)).chapters();
    }

    private static Content heading(Vocabulary vocabulary, String key) {
        return new Content.Prose(Role.HEADING, Phrase.words(vocabulary.phrase(key)));
    }

    private static List<String> notes(Design design, Counts counts, Vocabulary vocabulary, Needles needles) {
        List<String> notes = new ArrayList<>();
        List<String> unsound = counts.unsound();
        if (!unsound.isEmpty()) {
            notes.add(vocabulary.phrase(unsound.size() == 1 ? "note.unsound" : "note.unsound.several")
                    .replace("{0}", FrontMatter.oneLine(String.join(vocabulary.phrase("list.separator"), unsound))));
        }
        notes.add(vocabulary.phrase("note.start." + design.direction()));
        notes.add(vocabulary.phrase(needles == Needles.NEUTRAL ? "note.needles" : "note.needles." + needles));
        if (!(design.toe() instanceof AsymmetricToe)) {
            notes.add(vocabulary.phrase("note.pair"));
        }
        return notes;
    }
}
