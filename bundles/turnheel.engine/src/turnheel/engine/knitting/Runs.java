package turnheel.engine.knitting;

import java.util.Arrays;

/**
 * Loops of one needle, from its tip to its far end, in runs of the same kind; markers and gaps lie between as runs of no
 * loops. A plain stretch of any length is one run, so that to work it takes one step.
 */
final class Runs {

    private static final Loop[] KINDS = Loop.values();

    private Loop[] kinds = new Loop[16];
    private int[] counts = new int[16];
    /** Where the tip is in the ring of runs. */
    private int tip;
    private int size;
    private int loops;
    private int open;

    Runs() {
        Arrays.fill(kinds, Loop.REGULAR);
    }

    Runs copy() {
        Runs copy = new Runs();
        copy.take(this);
        return copy;
    }

    private void take(Runs other) {
        kinds = other.kinds.clone();
        counts = other.counts.clone();
        tip = other.tip;
        size = other.size;
        loops = other.loops;
        open = other.open;
    }

    /** Runs, markers and gaps counted too. */
    int size() {
        return size;
    }

    int loops() {
        return loops;
    }

    /** Yarn-overs among the loops. */
    int open() {
        return open;
    }

    /** The kind of the run that is {@code place} runs from the tip. */
    Loop kind(int place) {
        return kinds[at(place)];
    }

    /** Its loops. */
    int count(int place) {
        return counts[at(place)];
    }

    private int at(int place) {
        return tip + place & kinds.length - 1;
    }

    boolean startsWith(Loop kind) {
        return size > 0 && kinds[tip] == kind;
    }

    boolean endsWith(Loop kind) {
        return size > 0 && kinds[at(size - 1)] == kind;
    }

    boolean has(Loop kind) {
        for (int place = 0; place < size; place++) {
            if (kind(place) == kind) {
                return true;
            }
        }
        return false;
    }

    void push(Loop kind, int count) {
        if (size > 0 && kinds[tip] == kind) {
            counts[tip] += count;
        } else {
            makeRoom();
            tip = tip - 1 & kinds.length - 1;
            kinds[tip] = kind;
            counts[tip] = count;
            size++;
        }
        added(kind, count);
    }

    void pushFar(Loop kind, int count) {
        int last = at(size - 1);
        if (size > 0 && kinds[last] == kind) {
            counts[last] += count;
        } else {
            makeRoom();
            last = at(size);
            kinds[last] = kind;
            counts[last] = count;
            size++;
        }
        added(kind, count);
    }

    private void added(Loop kind, int count) {
        loops += count;
        if (kind.isOpen()) {
            open += count;
        }
    }

    /** Takes up to {@code most} loops of the run at the tip, or the marker or gap there; how many were taken. */
    int pop(int most) {
        int taken = Math.min(most, counts[tip]);
        added(kinds[tip], -taken);
        counts[tip] -= taken;
        if (counts[tip] == 0) {
            tip = tip + 1 & kinds.length - 1;
            size--;
        }
        return taken;
    }

    /** The same at the far end. */
    int popFar(int most) {
        int last = at(size - 1);
        int taken = Math.min(most, counts[last]);
        added(kinds[last], -taken);
        counts[last] -= taken;
        if (counts[last] == 0) {
            size--;
        }
        return taken;
    }

    /** The next {@code loops} go to the far end of others, and what lies between them too. */
    void moveFar(int loops, Runs to, Effort effort) {
        for (int toMove = loops; toMove > 0;) {
            Loop kind = kind(0);
            int moved = pop(toMove);
            to.pushFar(kind, moved);
            toMove -= moved;
            effort.spend(1);
        }
    }

    /** Moves everything of {@code other} beyond the far end; what lay at its far end comes first. */
    void appendFromFar(Runs other) {
        for (int place = other.size - 1; place >= 0; place--) {
            pushFar(other.kind(place), other.count(place));
        }
        other.clear();
    }

    /** Moves everything of {@code other} beyond the far end; what lay at its tip comes first. */
    void appendFromTip(Runs other) {
        for (int place = 0; place < other.size; place++) {
            pushFar(other.kind(place), other.count(place));
        }
        other.clear();
    }

    /** Every loop of one kind becomes another; what is none of them stays. */
    void become(Loop from, Loop to) {
        Runs changed = new Runs();
        for (int place = 0; place < size; place++) {
            Loop kind = kind(place);
            changed.pushFar(kind == from ? to : kind, count(place));
        }
        take(changed);
    }

    /**
     * Adds so many loops to the longest run between two markers, for each section.
     *
     * @return false when a section has not enough loops to take away from; then nothing is right any more
     */
    boolean addToSections(int[] more) {
        int section = 0;
        int longest = -1;
        for (int place = 0; place <= size; place++) {
            boolean end = place == size;
            if (end || kind(place) == Loop.MARKER && place < size - 1) {
                if (!add(longest, more[section])) {
                    return false;
                }
                section++;
                longest = -1;
            } else if (kind(place).isPlain() && (longest < 0 || count(place) > count(longest))) {
                longest = place;
            }
        }
        return true;
    }

    /** Places a marker after so many loops. */
    void mark(int after) {
        Runs marked = new Runs();
        int before = 0;
        for (int place = 0; place < size; place++) {
            int count = count(place);
            boolean here = before < after && after <= before + count;
            int first = here ? after - before : count;
            marked.pushFar(kind(place), first);
            if (here) {
                marked.pushFar(Loop.MARKER, 0);
                if (count > first) {
                    marked.pushFar(kind(place), count - first);
                }
            }
            before += count;
        }
        take(marked);
    }

    private boolean add(int place, int more) {
        if (more == 0) {
            return true;
        }
        if (place < 0 || count(place) + more < 1) {
            return false;
        }
        counts[at(place)] += more;
        added(kind(place), more);
        return true;
    }

    /** The loop that is so many loops from the tip becomes another. */
    void become(int from, Loop to) {
        Runs changed = new Runs();
        int before = 0;
        for (int place = 0; place < size; place++) {
            int count = count(place);
            boolean here = kind(place).isLoop() && before <= from && from < before + count;
            int first = here ? from - before : count;
            if (first > 0 || count == 0) {
                changed.pushFar(kind(place), first);
            }
            if (here) {
                changed.pushFar(to, 1);
                if (count > first + 1) {
                    changed.pushFar(kind(place), count - first - 1);
                }
            }
            before += count;
        }
        take(changed);
    }

    /** Takes all of a kind that is no loop off the needle. */
    void remove(Loop kind) {
        Runs others = new Runs();
        for (int place = 0; place < size; place++) {
            if (kind(place) != kind) {
                others.pushFar(kind(place), count(place));
            }
        }
        take(others);
    }

    void clear() {
        size = 0;
        loops = 0;
        open = 0;
    }

    private void makeRoom() {
        if (size < kinds.length) {
            return;
        }
        Loop[] moreKinds = new Loop[2 * size];
        int[] moreCounts = new int[2 * size];
        Arrays.fill(moreKinds, KINDS[0]);
        for (int place = 0; place < size; place++) {
            moreKinds[place] = kind(place);
            moreCounts[place] = count(place);
        }
        kinds = moreKinds;
        counts = moreCounts;
        tip = 0;
    }
}
