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
 * what follows work best: that the stated count is wrong, or that the needle should hold as many as stated.
 */
final class SizeKnitter {

    /** Lines that an explanation is tried on. */
    private static final int LOOK_AHEAD = 25;

    /** Findings after which explanations are no longer compared: such a text is no pattern. */
    private static final int MOST_EXPLAINED = 40;

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
        knitter.from(0, tasks.size());
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

    private void from(int first, int end) {
        for (int place = first; place < end && !progress.effort().isSpent(); place++) {
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
        Needle before = progress.needle().copy(progress.effort());
        int worked = progress.worked().size();
        int traced = progress.trace().size();
        if (task instanceof Task.Unknown) {
            goOn(before, false, stated, place);
            return;
        }
        if (adrift && !beginsAnew(task.line())) {
            stated.ifPresent(loops -> goOn(before, false, stated, place));
            return;
        }
        adrift = false;
        try {
            new LineHands(progress).work(task.line(), place);
        } catch (Misfit misfit) {
            findings.add(new Finding(place, misfit.check(), false, misfit.expected(), misfit.found(), ""));
            // working the line may have taken several rounds; a section's beginning never fails
            progress.undo(before, Math.min(worked, progress.worked().size()), traced);
            goOn(before, false, stated, place);
            return;
        }
        for (Check hole : progress.needle().takeHoles()) {
            findings.add(new Finding(place, hole, false, "", "", ""));
        }
        stated.ifPresent(loops -> compare(loops, place));
    }

    /** What is known of the needle does not matter to a new piece. */
    private static boolean beginsAnew(Line line) {
        return line instanceof Line.Worked worked && worked.label().isEmpty() && !worked.instructions().isEmpty()
                && worked.instructions().getFirst() instanceof Instruction.CastOn;
    }

    private void compare(int stated, int place) {
        Needle needle = progress.needle();
        int loops = needle.loops();
        if (stated == loops || stated == loops + needle.held().loops()) {
            agreed.set(place);
            return;
        }
        boolean byText = goOn(needle, true, Optional.of(stated), place);
        findings.add(new Finding(place, Check.TEXT_COUNT, true, Integer.toString(loops), Integer.toString(stated),
                byText ? Integer.toString(loops) : ""));
    }

    /**
     * Chooses the needle to go on with.
     *
     * @param needle as it was before a line that went wrong, or as it is after one whose stated count differs
     * @return whether that very needle explains best what follows
     */
    private boolean goOn(Needle needle, boolean worked, Optional<Integer> stated, int place) {
        List<Needle> candidates = new ArrayList<>();
        if (worked || stated.isEmpty()) {
            candidates.add(needle);
        }
        stated.ifPresent(loops -> candidates.addAll(Adjusted.to(needle, loops)));
        if (candidates.isEmpty()) {
            candidates.add(needle);
        }
        if (!explores) {
            progress.use(candidates.getFirst());
            adrift = !worked && stated.isEmpty();
            return true;
        }
        boolean canBeAdrift = !worked && stated.isEmpty();
        int best = -1;
        int fewest = Integer.MAX_VALUE;
        for (int i = 0; i < candidates.size() && fewest > 0 && findings.size() < MOST_EXPLAINED; i++) {
            int further = furtherFindings(candidates.get(i), place);
            if (further < fewest) {
                fewest = further;
                best = i;
            }
        }
        progress.use(candidates.get(Math.max(0, best)));
        adrift = canBeAdrift && fewest > 0;
        return best == 0;
    }

    private int furtherFindings(Needle candidate, int place) {
        Effort effort = new Effort();
        Progress trial = progress.copy(effort);
        trial.use(candidate.copy(effort));
        SizeKnitter knitter = new SizeKnitter(tasks, closesYarnOvers, trial, false);
        knitter.from(place + 1, Math.min(tasks.size(), place + 1 + LOOK_AHEAD));
        return knitter.findings.size();
    }
}
