package turnheel.engine.writing;

import java.util.List;
import java.util.Optional;

import turnheel.engine.instruction.Line;

/** What a paragraph is made from, so that an edition for one size can be made of it. */
sealed interface Content {

    /** The same for one size alone; empty where it does not concern that size. */
    Optional<Content> onlySize(int size);

    /** A paragraph of words and values. */
    record Prose(Role role, List<Piece> pieces) implements Content {
        public Prose {
            pieces = List.copyOf(pieces);
        }

        @Override
        public Optional<Content> onlySize(int size) {
            Phrase phrase = new Phrase();
            for (Piece piece : pieces) {
                switch (piece) {
                    case Piece.Words(String text) -> phrase.add(text);
                    case Piece.Values(var each) ->
                        phrase.add(List.of(new Piece.Values(List.of(each.get(each.size() == 1 ? 0 : size)))));
                }
            }
            return Optional.of(new Prose(role, phrase.pieces()));
        }
    }

    /** A line of instructions. */
    record Told(Line line) implements Content {
        @Override
        public Optional<Content> onlySize(int size) {
            return OneSize.of(line, size).map(Told::new);
        }
    }

    /** The sizes that the text is for. */
    record SizeList(List<String> labels) implements Content {
        public SizeList {
            labels = List.copyOf(labels);
        }

        @Override
        public Optional<Content> onlySize(int size) {
            return Optional.of(new SizeList(List.of(labels.get(size))));
        }
    }

    /** The abbreviations that the instructions use. */
    record Abbreviations() implements Content {
        @Override
        public Optional<Content> onlySize(int size) {
            return Optional.of(this);
        }
    }
}
