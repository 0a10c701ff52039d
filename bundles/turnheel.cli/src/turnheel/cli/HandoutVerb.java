package turnheel.cli;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import turnheel.engine.checks.Checks;
import turnheel.engine.grading.Graded;
import turnheel.exchange.document.Document;
import turnheel.exchange.handout.HandOut;
import turnheel.exchange.handout.Practice;
import turnheel.exchange.handout.Topic;
import turnheel.model.Literals;

/** {@code handout}: a page for each technique of a pattern, or a practice sock with the stages at which to stop. */
@Command(name = "handout")
final class HandoutVerb extends Verb {

    @Mixin
    private PatternArgument pattern;

    @Option(names = "--part", order = 1, paramLabel = "PART")
    private List<String> parts = new ArrayList<>();

    @Option(names = "--size", order = 2, paramLabel = "SIZE")
    private String size;

    @Option(names = "--practice", order = 3)
    private boolean practice;

    @Mixin
    private DocumentTarget target;

    HandoutVerb(Output output) {
        super(output);
    }

    @Override
    public Integer call() throws Refusal {
        if (practice && (size != null || !parts.isEmpty())) {
            throw new Refusal(Words.HANDOUT_PRACTICE_ALONE.text());
        }
        target.requireFree();
        Graded graded = pattern.complete();
        target.put(practice ? practice(graded) : handOut(graded), output(), isJson());
        return Verdict.noted(Checks.of(graded), output(), pattern.name());
    }

    private Document handOut(Graded graded) throws Refusal {
        if (size != null) {
            CellName.knownSize(graded.design(), size, pattern.name());
        }
        return HandOut.of(graded, topics(HandOut.topics(graded)), Optional.ofNullable(size));
    }

    /** Those that are asked for, or all that the pattern has. */
    private Set<Topic> topics(List<Topic> ofPattern) throws Refusal {
        Set<Topic> topics = EnumSet.noneOf(Topic.class);
        for (String part : parts) {
            Topic topic = Choice.of("--part", part, Topic.class);
            if (!ofPattern.contains(topic)) {
                throw new Refusal(Words.HANDOUT_PART_ABSENT.with(pattern.name(), part,
                        String.join(", ", ofPattern.stream().map(Literals::text).toList())));
            }
            topics.add(topic);
        }
        return topics.isEmpty() ? EnumSet.copyOf(ofPattern) : topics;
    }

    private Document practice(Graded graded) throws Refusal {
        Optional<Practice> sock = Practice.of(graded.design());
        if (sock.isEmpty()) {
            throw new Refusal(Words.HANDOUT_NO_PRACTICE.with(pattern.name()));
        }
        return sock.get().document();
    }
}
