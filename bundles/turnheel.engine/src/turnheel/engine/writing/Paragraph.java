package turnheel.engine.writing;

import java.util.List;

/** A paragraph of a pattern. */
public record Paragraph(Role role, List<Piece> pieces) {
    public Paragraph {
        pieces = List.copyOf(pieces);
    }
}
