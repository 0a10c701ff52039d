package turnheel.cli;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

import turnheel.engine.design.Spelling;

/** What is wrong with the arguments of a command, in one sentence that also says what there is. */
final class UsageErrors {

    private UsageErrors() {
    }

    static String sentence(ParameterException refused) {
        CommandSpec command = refused.getCommandLine().getCommandSpec();
        return switch (refused) {
            case UnmatchedArgumentException unmatched -> unmatched(command, unmatched.getUnmatched().getFirst());
            case MissingParameterException missing -> Words.ARGUMENT_MISSING.with(command.qualifiedName(),
                    missing.getMissing().stream().map(UsageErrors::usage).collect(Collectors.joining(", ")));
            case OverwrittenOptionException twice -> Words.OPTION_TWICE.with(command.qualifiedName(),
                    usage(twice.getOverwritten()));
            case ParameterException other when command.parent() == null -> Words.VERB_MISSING.with(verbs(command));
            case ParameterException other -> Words.USAGE_OTHER.with(command.qualifiedName(), other.getMessage());
        };
    }

    private static String unmatched(CommandSpec command, String argument) {
        if (argument.startsWith("-") && argument.length() > 1) {
            // picocli knows the name only together with its value
            String name = argument.startsWith("--") ? argument.replaceFirst("=.*", "") : argument.substring(0, 2);
            List<String> options = command.options().stream().map(OptionSpec::longestName).toList();
            return didYouMean(Words.OPTION_UNKNOWN.with(command.qualifiedName(), name, String.join(" ", options)),
                    Spelling.suggestion(name, options));
        }
        if (command.parent() == null) {
            return didYouMean(Words.VERB_UNKNOWN.with(argument, verbs(command)),
                    Spelling.suggestion(argument, command.subcommands().keySet()));
        }
        return Words.ARGUMENT_LEFT_OVER.with(command.qualifiedName(), argument);
    }

    private static String verbs(CommandSpec command) {
        return String.join(" ", command.subcommands().keySet());
    }

    private static String usage(ArgSpec argument) {
        return argument instanceof OptionSpec option
                ? Stream.of(option.longestName(), option.paramLabel()).collect(Collectors.joining(" "))
                : argument.paramLabel();
    }

    /** The sentence with a suggestion after it, where there is one. */
    static String didYouMean(String sentence, Optional<String> suggestion) {
        return suggestion.map(word -> Words.DID_YOU_MEAN.with(sentence, word)).orElse(sentence);
    }

    /** That a word is none of those there are. */
    static String unknownChoice(String of, String word, Collection<String> choices) {
        return didYouMean(Words.CHOICE_UNKNOWN.with(of, word, String.join(" ", choices)), Spelling.suggestion(word, choices));
    }
}
