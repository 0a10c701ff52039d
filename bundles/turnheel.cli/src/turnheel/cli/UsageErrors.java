package turnheel.cli;

import java.util.Arrays;
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

    /** @param arguments all of them, from the verb on */
    static String sentence(ParameterException refused, String[] arguments) {
        CommandSpec command = refused.getCommandLine().getCommandSpec();
        return switch (refused) {
            case UnmatchedArgumentException unmatched -> unmatched(command, unmatched.getUnmatched().getFirst());
            case MissingParameterException missing -> missing(command, missing.getMissing(), arguments);
            case OverwrittenOptionException twice -> Words.OPTION_TWICE.with(command.qualifiedName(),
                    usage(twice.getOverwritten()));
            case ParameterException other when command.parent() == null -> Words.VERB_MISSING.with(verbs(command));
            case ParameterException other -> Words.USAGE_OTHER.with(command.qualifiedName(), other.getMessage());
        };
    }

    /** What is missing was perhaps mistyped; picocli looks for that later only. */
    private static String missing(CommandSpec command, List<ArgSpec> missing, String[] arguments) {
        return Arrays.stream(arguments).takeWhile(argument -> !argument.equals("--"))
                .filter(argument -> argument.startsWith("--") && !command.optionsMap().containsKey(name(argument)))
                .findFirst().map(mistyped -> unmatched(command, mistyped))
                .orElseGet(() -> Words.ARGUMENT_MISSING.with(command.qualifiedName(),
                        missing.stream().map(UsageErrors::usage).collect(Collectors.joining(", "))));
    }

    private static String unmatched(CommandSpec command, String argument) {
        if (argument.startsWith("-") && argument.length() > 1) {
            String name = name(argument);
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

    /** The option's name without a value that is written to it. */
    private static String name(String argument) {
        return argument.startsWith("--") ? argument.replaceFirst("(?s)=.*", "") : argument.substring(0, 2);
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
        return didYouMean(Words.CHOICE_UNKNOWN.with(of, word, String.join(" ", choices)),
                Spelling.suggestion(word, choices));
    }
}
