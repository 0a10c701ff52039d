package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

class HelpTest {

    @TempDir
    private Path folder;

    private static CommandLine commandLine() {
        return Main.commandLine(new Output(new PrintStream(PrintStream.nullOutputStream()),
                new PrintStream(PrintStream.nullOutputStream())));
    }

    static Stream<String> verbs() {
        return commandLine().getSubcommands().keySet().stream();
    }

    @Test
    void theFirstHelpListsEveryVerb() {
        String help = Run.of("--help").clean().out();
        verbs().forEach(verb -> assertTrue(
                Pattern.compile("(?m)^  %s +[A-Z]".formatted(verb)).matcher(help).find(), help));
        assertEquals(13, verbs().count());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("verbs")
    void everyArgumentIsExplained(String verb) {
        CommandLine command = commandLine().getSubcommands().get(verb);
        String help = Run.of(verb, "--help").clean().out();
        assertTrue(help.contains("Usage: turnheel " + verb + " "), help);
        for (OptionSpec option : command.getCommandSpec().options()) {
            assertTrue(help.contains(option.longestName()), help);
            assertFalse(List.of(option.description()).isEmpty(), option.longestName());
        }
        for (PositionalParamSpec argument : command.getCommandSpec().positionalParameters()) {
            assertFalse(List.of(argument.description()).isEmpty(), argument.paramLabel());
        }
    }

    /** The examples as they are printed, run one after the other on files in a folder of their own. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("verbs")
    void everyExampleWorks(String verb) throws IOException {
        if (!verb.equals("new")) {
            Run.of("new", folder.resolve("my-socks.turnheel"), "--sizes", "women").clean();
            Run.of("new", folder.resolve("my-socks-2.turnheel"), "--sizes", "women", "--toe", "wedge").clean();
            Run.of("write", folder.resolve("my-socks.turnheel"), "--to", folder.resolve("manuscript.txt")).clean();
            Files.writeString(folder.resolve("results.csv"), "size,key,actual\nM,foot.length,22 cm\n");
            Run.of("export", folder.resolve("my-socks.turnheel"), "--to", folder.resolve("edited.xlsx")).clean();
            Path patterns = Files.createDirectory(folder.resolve("my-patterns"));
            Files.copy(folder.resolve("my-socks.turnheel"), patterns.resolve("my-socks.turnheel"));
        }
        List<String> examples = Commands.in(Run.of(verb, "--help").out());
        assertFalse(examples.isEmpty());
        for (String example : examples) {
            assertTrue(example.startsWith("turnheel " + verb), example);
            Run run = Commands.run(example, folder);
            assertEquals("", run.err(), example);
            assertEquals(0, run.exitCode(), example);
            assertFalse(run.out().isEmpty(), example);
        }
    }
}
