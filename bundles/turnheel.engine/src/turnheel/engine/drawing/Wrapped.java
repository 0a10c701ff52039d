package turnheel.engine.drawing;

import java.util.ArrayList;
import java.util.List;

/** A sentence on several lines. */
final class Wrapped {

    private Wrapped() {
    }

    /** Lines that are at most {@code width} mm wide, unless a single word is wider: that is cut. */
    static List<String> lines(String text, double size, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (TextWidth.of(longer, size) <= width) {
                line = longer;
            } else {
                if (!line.isEmpty()) {
                    lines.add(line);
                }
                line = TextWidth.cut(word, size, width);
            }
        }
        lines.add(line);
        return lines;
    }
}
