package turnheel.model;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * The text of a file by line and column. A parser tells only where a start tag ends; a person wants to be sent to the
 * attribute, which may stand some lines above.
 */
final class SourceText {

    /** A start tag: where it begins and where each of its attributes does, by the attribute's name as written. */
    record Tag(Position start, Map<String, Position> attributes) {

        static final Tag NONE = new Tag(Position.NONE, Map.of());

        Position attribute(String name) {
            return attributes.getOrDefault(name, start);
        }
    }

    private static final Pattern LINE_END = Pattern.compile("\r\n|\r|\n");
    private static final Pattern ATTRIBUTE = Pattern.compile("\\s([^\\s=<>/\"']+)\\s*=\\s*(?:\"[^\"]*+\"|'[^']*+')");

    private final String text;
    private final int[] lineStarts;

    SourceText(String text) {
        this.text = text;
        this.lineStarts = IntStream.concat(IntStream.of(0), LINE_END.matcher(text).results().mapToInt(end -> end.end()))
                .toArray();
    }

    String text() {
        return text;
    }

    Position position(int offset) {
        int found = Arrays.binarySearch(lineStarts, offset);
        int line = found >= 0 ? found : -found - 2;
        return new Position(line + 1, offset - lineStarts[line] + 1);
    }

    /** The start tag that ends just before this place. A tag holds no other "<", so the last one before is its own. */
    Tag tagEndingAt(Position end) {
        int from = text.lastIndexOf('<', offset(end) - 1);
        Map<String, Position> attributes = new HashMap<>();
        Matcher matcher = ATTRIBUTE.matcher(text).region(from, offset(end));
        while (matcher.find()) {
            attributes.put(matcher.group(1), position(matcher.start(1)));
        }
        return new Tag(position(from), attributes);
    }

    /** Where the nearest of these marks before a place begins. */
    Position last(String mark, Position end) {
        return position(Math.max(0, text.lastIndexOf(mark, offset(end) - 1)));
    }

    /**
     * Where the text between two tags begins that ends just before a place: at its first character that is not blank.
     */
    Position textEndingAt(Position end) {
        int start = text.lastIndexOf('>', offset(end) - 1) + 1;
        while (Character.isWhitespace(text.charAt(start))) {
            start++;
        }
        return position(start);
    }

    private int offset(Position position) {
        return lineStarts[position.line() - 1] + position.column() - 1;
    }
}
