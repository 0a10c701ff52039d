package turnheel.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Commands as they stand in texts for people: indented, over several lines, with arguments in quotes. */
final class Commands {

    private static final Pattern ARGUMENT = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    private static final Pattern FILE = Pattern.compile(
            "[\\w-]+\\.(turnheel|xlsx|csv|html|md|docx|svg|png|pdf|txt)|my-patterns|published");

    private Commands() {
    }

    /** The commands in a text, each in one line. */
    static List<String> in(String text) {
        String joined = text.replaceAll("\\\\\\R\\s*", "");
        return joined.lines().filter(line -> line.matches(" +turnheel .*")).map(String::strip).toList();
    }

    /** Runs a command in this process, with its files in a folder. */
    static Run run(String command, Path folder) {
        List<Object> arguments = new ArrayList<>();
        Matcher matcher = ARGUMENT.matcher(command);
        while (matcher.find()) {
            // "foot.stitches[M]"=64 does not occur: a quote begins and ends an argument
            String argument = matcher.group(1) != null ? matcher.group(1) : matcher.group(2);
            arguments.add(FILE.matcher(argument).matches() ? folder.resolve(argument) : argument);
        }
        arguments.removeFirst();
        return Run.of(arguments.toArray());
    }
}
