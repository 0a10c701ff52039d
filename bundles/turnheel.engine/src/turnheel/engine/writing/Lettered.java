package turnheel.engine.writing;

import java.util.List;

/**
 * A paragraph in which letters may stand for long lists of values.
 *
 * @param tables what follows it; a letter of a paragraph is in the next table that has it, up to the next heading, or in
 *     one before under the same heading
 */
public record Lettered(Paragraph paragraph, List<SmallTable> tables) {
    public Lettered {
        tables = List.copyOf(tables);
    }
}
