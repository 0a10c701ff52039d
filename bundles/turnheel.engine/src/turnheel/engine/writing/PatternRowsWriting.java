package turnheel.engine.writing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import turnheel.engine.design.StitchPattern;
import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Line;
import turnheel.engine.instruction.Line.Fabric;
import turnheel.engine.instruction.Line.Label;
import turnheel.engine.instruction.Sized;
import turnheel.engine.knitting.PatternRows;
import turnheel.engine.wording.Vocabulary;

/** The rows of a stitch pattern under its name, in the words of the house style. */
final class PatternRowsWriting {

    private PatternRowsWriting() {
    }

    /** Nothing where its rows are not known. A row that cannot be read stands as typed; the checks tell of it. */
    static List<Content> of(StitchPattern pattern, Vocabulary vocabulary) {
        if (pattern.instructions().isEmpty()) {
            return List.of();
        }
        List<Content> contents = new ArrayList<>();
        contents.add(new Content.Prose(Role.HEADING, heading(pattern, vocabulary)));
        List<Optional<List<Instruction>>> rows = PatternRows.read(pattern.instructions()).instructions();
        for (int row = 0; row < rows.size(); row++) {
            Sized<Integer> number = Sized.all(row + 1);
            Label label = new Label(Fabric.ROUND, Optional.of(number), Optional.of(number), Optional.empty(),
                    Optional.empty());
            String typed = pattern.instructions().get(row);
            contents.add(rows.get(row)
                    .<Content>map(instructions -> new Content.Told(new Line.Worked(Optional.of(label), instructions,
                            Optional.empty(), Set.of())))
                    .orElseGet(() -> new Content.Prose(Role.INSTRUCTION, Phrase.filled(
                            vocabulary.phrase("label.with"), Phrase.filled(vocabulary.phrase("label." + Fabric.ROUND),
                                    List.of(Piece.Values.of(number))), Phrase.words(FrontMatter.oneLine(typed))))));
        }
        return contents;
    }

    private static List<Piece> heading(StitchPattern pattern, Vocabulary vocabulary) {
        String key = pattern.edge() == 0 ? "heading.stitchPattern" : "heading.stitchPattern.edge";
        String phrase = pattern.repeat() == 1 ? vocabulary.phraseOfOne(key) : vocabulary.phrase(key);
        return Phrase.filled(phrase, Phrase.words(vocabulary.phrase("stitchPattern." + pattern.zone())),
                Phrase.words(Integer.toString(pattern.repeat())), Phrase.words(Integer.toString(pattern.edge())));
    }
}
