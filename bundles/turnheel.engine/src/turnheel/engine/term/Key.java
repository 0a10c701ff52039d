package turnheel.engine.term;

import java.util.regex.Pattern;

/**
 * The stable name of a number in a pattern: the part it belongs to, a dot, and the number's own name, as in
 * {@code foot.stitches}. Keys stand in pattern files, workbooks and scripts; they are never translated or renamed.
 *
 * @throws IllegalArgumentException when the name is not of that shape
 */
public record Key(String name) implements Comparable<Key> {

    private static final Pattern SHAPE = Pattern.compile("[a-z][a-zA-Z0-9]*\\.[a-z][a-zA-Z0-9]*");

    public Key {
        if (!isKey(name)) {
            throw new IllegalArgumentException(
                    "\"%s\" is not a key; a key looks like foot.stitches".formatted(name));
        }
    }

    /** Whether the name is of the shape of a key. */
    public static boolean isKey(String name) {
        return SHAPE.matcher(name).matches();
    }

    /** What stands before the dot: the part of the sock, or {@code body}, {@code fit}, {@code gauge}. */
    public String part() {
        return name.substring(0, name.indexOf('.'));
    }

    @Override
    public int compareTo(Key other) {
        return name.compareTo(other.name);
    }

    @Override
    public String toString() {
        return name;
    }
}
