package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

import turnheel.engine.instruction.Instruction;
import turnheel.engine.instruction.Line;
import turnheel.engine.query.Check;

/**
 * Knits one size. Where the text and the needle disagree it notes the finding and goes on with that explanation which lets
 * what follows work best: that the stated count is wrong, that the needle should hold as many as stated, or that a marker is
 * missing.
 */
final class SizeKnitter {

    /** Lines that an explanation is tried on. */
    private static final int LOOK_AHEAD = 80;

    /** Findings after which explanations are no longer compared: such a text is no pattern. */
    private static final int MOST_EXPLAINED = 30;

    /** Loops among which the place of a missing marker is looked for. */
    private static final int MOST_PLACES = 400;

    private final List<Task> tasks;
    private final boolean[] closesYarnOvers;
    private final Progress progress;
    private final boolean explores;
    /** Whether the count on the needle is unknown until one is stated. */
    private boolean adrift;
    private final List<Finding> findings = new ArrayList<>();
    private final BitSet agreed = new BitSet();

    private SizeKnitter(List<Task> tasks, boolean[] closesYarnOvers, Progress progress, boolean explores) {
        this.tasks = tasks;
        this.closesYarnOvers = closesYarnOvers;
        this.progress = progress;
        this.explores = explores;
    }

    /** @param closesYarnOvers for each task, whether its section closes yarn-overs one round later */
    static SizeKnitter knit(List<Task> tasks, boolean[] closesYarnOvers, int size) {
        SizeKnitter knitter = new SizeKnitter(tasks, closesYarnOvers, new Progress(new Effort(), size), true);
        knitter.from(0, tasks.size(), Integer.MAX_VALUE);
        return knitter;
    }

    List<Finding> findings() {
        return findings;
    }

    List<Traced> trace() {
        return progress.trace();
    }

    /** The lines after which the stated count was on the needle. */
    BitSet agreed() {
        return agreed;
    }

    private void from(int first, int end, int mostFindings) {
        for (int place = first; place < end && !progress.effort().isSpent() && findings.size() < mostFindings; place++) {
            Task task = tasks.get(place);
            boolean mine = task.line().onlySizes().isEmpty() || task.line().onlySizes().contains(progress.size());
            if (mine) {
                progress.closeYarnOvers(closesYarnOvers[place]);
                work(task, place);
            }
        }
    }

    private void work(Task task, int place) {
        Optional<Integer> stated = task.line().stated().flatMap(sized -> sized.get(progress.size()));
        if (task instanceof Task.Unknown || adrift && !beginsAnew(task.line())) {
            if (task instanceof Task.Unknown || stated.isPresent()) {
                unknown(stated, place);
            }
            return;
        }
        adrift = false;
        Needle before = progress.needle().copy(progress.effort());
        int worked = progress.worked().size();
        int traced = progress.trace().size();
        progress.flaws().beginLine();
        try {
            new LineHands(progress).work(task.line(), place);
        } catch (Misfit misfit) {
            boolean known = progress.flaws().isKnown();
            // working the line may have taken several rounds; a section's beginning never fails
            progress.undo(before.copy(before.effort()), Math.min(worked, progress.worked().size()), traced);
            if (!known) {
                findings.add(new Finding(place, misfit.check(), false, misfit.expected(), misfit.found(), ""));
                progress.flaws().add(Optional.empty());
            }
            forgive(task.line(), before, misfit.check(), stated, place);
            return;
        }
        for (Check hole : progress.needle().takeHoles()) {
            if (progress.flaws().isNew(hole)) {
                findings.add(new Finding(place, hole, false, "", "", ""));
            }
        }
        stated.ifPresent(loops -> compare(loops, place));
    }

    /** What is known of the needle does not matter to a new piece. */
    private static boolean beginsAnew(Line line) {
        return line instanceof Line.Worked worked && worked.label().isEmpty() && !worked.instructions().isEmpty()
                && worked.instructions().getFirst() instanceof Instruction.CastOn;
    }

    /** Something is done that nobody knows: the count is as stated, as before, or one that what follows speaks of. */
    private void unknown(Optional<Integer> stated, int place) {
        Needle needle = progress.needle();
        List<Needle> candidates = new ArrayList<>();
        if (stated.isPresent()) {
            candidates.addAll(Adjusted.to(needle, stated.get()));
        } else {
            candidates.add(needle);
            if (explores) {
                Guesses.of(tasks, place, progress.size()).forEach(count -> candidates.addAll(Adjusted.to(needle, count)));
            }
        }
        boolean works = goOnWithBest(candidates, place, Optional.empty()) == 0;
        adrift = stated.isEmpty() && !works;
        if (!adrift) {
            progress.trace(place, 0);
        }
    }

    /** The line went wrong: makes the best of it, or finds the marker without which it does. */
    private void forgive(Line line, Needle before, Check check, Optional<Integer> stated, int place) {
        if (findings.size() >= MOST_EXPLAINED) {
            progress.trace(place, 0);
            return;
        }
        List<Needle> candidates = new ArrayList<>();
        Optional<Progress> forgiven = tryOn(before, line, place, true);
        Optional<Needle> needle = forgiven.map(Progress::needle);
        if (needle.isPresent() && stated.isPresent()) {
            candidates.addAll(Adjusted.to(needle.get(), stated.get()));
        } else {
            needle.ifPresent(candidates::add);
        }
        if (explores && check == Check.TEXT_MARKER && before.loops() < MOST_PLACES) {
            for (int loops = 1; loops < before.left().loops(); loops++) {
                Needle marked = before.copy(before.effort());
                marked.left().mark(loops);
                tryOn(marked, line, place, false).map(Progress::needle)
                        .filter(after -> stated.isEmpty() || after.loops() == stated.get()).ifPresent(candidates::add);
            }
        }
        if (stated.isPresent()) {
            candidates.addAll(Adjusted.to(before, stated.get()));
        } else {
            candidates.add(before);
            if (explores) {
                Guesses.of(tasks, place, progress.size()).forEach(count -> candidates.addAll(Adjusted.to(before, count)));
            }
        }
        goOnWithBest(candidates, place, Optional.empty());
        forgiven.ifPresentOrElse(progress::takeOver, () -> progress.trace(place, 0));
    }

    /** How the line is worked on a copy of the needle. */
    private Optional<Progress> tryOn(Needle needle, Line line, int place, boolean forgiving) {
        Progress trial = progress.copy(new Effort());
        trial.use(needle.copy(trial.effort()));
        trial.needle().forgiving(forgiving);
        try {
            new LineHands(trial).work(line, place);
        } catch (Misfit stillWrong) {
            return Optional.empty();
        }
        trial.needle().takeHoles();
        trial.needle().forgiving(false);
        trial.use(trial.needle().copy(progress.effort()));
        return Optional.of(trial);
    }

    private void compare(int stated, int place) {
        Needle needle = progress.needle();
        int loops = needle.loops();
        if (stated == loops || stated == loops + needle.held().loops()) {
            agreed.set(place);
            return;
        }
        boolean known = progress.flaws().explains(stated - loops);
        needle.finishRound();
        List<Needle> candidates = new ArrayList<>();
        if (!known) {
            candidates.add(needle);
        }
        candidates.addAll(Adjusted.to(needle, stated));
        goOnWithBest(candidates, place, known ? Optional.empty() : Optional.of(stated));
        if (!known) {
            boolean byText = progress.needle().loops() == loops;
            findings.add(new Finding(place, Check.TEXT_COUNT, true, Integer.toString(loops), Integer.toString(stated),
                    byText ? Integer.toString(loops) : ""));
            if (!byText) {
                progress.flaws().add(Optional.of(stated - loops));
            }
        }
    }

    /**
     * Goes on with the needle on which most of what follows works; how much of it does not.
     *
     * @param stated the count that the text states and the line does not give: when it is right, the line is not
     */
    private int goOnWithBest(List<Needle> candidates, int place, Optional<Integer> stated) {
        Needle best = candidates.isEmpty() ? progress.needle() : candidates.getFirst();
        int fewest = Integer.MAX_VALUE;
        if (explores && findings.size() < MOST_EXPLAINED) {
            for (Needle candidate : candidates) {
                int further = fewest > 0 ? furtherFindings(candidate, place, fewest, stated) : fewest;
                if (further < fewest) {
                    fewest = further;
                    best = candidate;
                }
            }
        }
        progress.use(best);
        return fewest;
    }

    private int furtherFindings(Needle candidate, int place, int most, Optional<Integer> stated) {
        Progress trial = progress.copy(new Effort());
        stated.filter(count -> count == candidate.loops())
                .ifPresent(count -> trial.flaws().add(Optional.of(count - progress.needle().loops())));
        trial.use(candidate.copy(trial.effort()));
        SizeKnitter knitter = new SizeKnitter(tasks, closesYarnOvers, trial, false);
        knitter.from(place + 1, Math.min(tasks.size(), place + 1 + LOOK_AHEAD), most);
        return knitter.findings.size();
    }
}
