package turnheel.exchange;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Names of files of which each holds one size: {@code socks-M.html} and {@code socks-L.html} beside {@code socks.html}. A
 * label is other people's text: nothing in it can lead to another folder, hide a file or change its ending.
 */
public final class SizeFileNames {

    /** Characters of a label in a name; far fewer than any disk takes. */
    private static final int LONGEST = 40;

    private SizeFileNames() {
    }

    /**
     * A file for each size, in the order of the labels. Where two labels give one name, also where a disk does not tell
     * capitals from small letters, the later one gets a number.
     *
     * @param target the file that they are named after; its ending is theirs
     * @param labels of the sizes, each once
     */
    public static Map<String, Path> of(Path target, List<String> labels) {
        String name = target.getFileName().toString();
        int dot = name.lastIndexOf('.');
        String stem = dot < 0 ? name : name.substring(0, dot);
        String ending = dot < 0 ? "" : name.substring(dot);
        Map<String, Path> files = new LinkedHashMap<>();
        Set<String> taken = new HashSet<>();
        for (String label : labels) {
            String safe = safe(label);
            String unique = safe;
            for (int number = 2; !taken.add(unique.toLowerCase(Locale.ROOT)); number++) {
                unique = safe + "-" + number;
            }
            files.put(label, target.resolveSibling(stem + "-" + unique + ending));
        }
        return files;
    }

    /** Letters and digits as they are, whatever else as a hyphen. */
    private static String safe(String label) {
        StringBuilder safe = new StringBuilder();
        label.codePoints().limit(LONGEST).forEach(c -> {
            if (Character.isLetterOrDigit(c) || "._+".indexOf(c) >= 0) {
                safe.appendCodePoint(c);
            } else if (!safe.isEmpty() && safe.charAt(safe.length() - 1) != '-') {
                safe.append('-');
            }
        });
        String trimmed = safe.toString().replaceAll("^[-.]+|[-.]+$", "");
        return trimmed.isEmpty() ? "size" : trimmed;
    }
}
