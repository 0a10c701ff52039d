package turnheel.engine.knitting;

import turnheel.engine.query.Check;

/** Loops of a needle that go on hold, wait there, and come back. */
final class Holding {

    private final Needle needle;

    Holding(Needle needle) {
        this.needle = needle;
    }

    /** The next {@code wanted} loops go on hold. */
    void hold(int wanted) {
        int loops = needed(needle.left(), wanted, Check.TEXT_ROUND);
        needle.left().moveFar(loops, needle.held(), needle.effort());
    }

    /** The {@code wanted} loops worked last go on hold, before those that lie there. */
    void holdWorked(int wanted) {
        int loops = needed(needle.right(), wanted, Check.TEXT_ROUND);
        for (int toMove = loops; toMove > 0;) {
            Loop kind = needle.right().kind(0);
            int moved = needle.right().pop(toMove);
            needle.held().push(kind, moved);
            toMove -= moved;
            needle.look(1);
        }
        needle.beginRow();
    }

    /** The {@code wanted} loops at the end of the round go on hold. */
    void holdLast(int wanted) {
        if (needle.left().loops() == 0) {
            needle.left().appendFromFar(needle.right());
        }
        int loops = needed(needle.left(), wanted, Check.TEXT_ROUND);
        for (int toMove = loops; toMove > 0;) {
            Loop kind = needle.left().kind(needle.left().size() - 1);
            int moved = needle.left().popFar(toMove);
            needle.held().push(kind, moved);
            toMove -= moved;
            needle.look(1);
        }
    }

    /** Only the next {@code wanted} loops are there to be worked; what lies beyond them is handed out. */
    Runs workOver(int wanted) {
        int loops = needed(needle.left(), wanted, Check.TEXT_ROUND);
        Runs part = new Runs();
        needle.left().moveFar(loops, part, needle.effort());
        Runs beyond = needle.left();
        needle.left(part);
        return beyond;
    }

    /** What was handed out comes back, after all of the part was worked. */
    void goOnWith(Runs beyond) {
        if (needle.left().loops() > 0) {
            needle.misfit(Check.TEXT_ROUND, needle.loops(), needle.right().loops());
        }
        needle.left().appendFromTip(beyond);
    }

    /** All that is on hold comes back, after all others. */
    void takeAllHeld() {
        if (needle.left().loops() == 0) {
            needle.left().appendFromFar(needle.right());
        }
        needle.left().appendFromTip(needle.held());
    }

    /** All but the next {@code wanted} loops go on hold; what follows is worked flat on those. */
    void workOnlyOn(int wanted) {
        needle.turnIfOwed();
        if (needle.left().loops() == 0) {
            needle.left().appendFromFar(needle.right());
        }
        int loops = needed(needle.left(), wanted, Check.TEXT_ROUND);
        Runs part = new Runs();
        needle.left().moveFar(loops, part, needle.effort());
        needle.left().remove(Loop.START);
        needle.held().appendFromTip(needle.left());
        needle.right().remove(Loop.START);
        needle.held().appendFromFar(needle.right());
        needle.held().become(Loop.RESTING, Loop.REGULAR);
        part.become(Loop.RESTING, Loop.REGULAR);
        needle.left(part);
        needle.beginFlatPart();
    }

    /** The next {@code wanted} loops on hold come back on the left needle, before all others. */
    void takeHeld(int wanted) {
        int loops = needed(needle.held(), wanted, Check.TEXT_HELD);
        needle.turnBackIfOwed();
        Runs back = new Runs();
        needle.held().moveFar(loops, back, needle.effort());
        for (int place = back.size() - 1; place >= 0; place--) {
            needle.left().push(back.kind(place), back.count(place));
        }
    }

    /** The text tells how many are on hold. */
    void checkHeld(int loops) {
        if (needle.held().loops() != loops) {
            needle.misfit(Check.TEXT_COUNT, needle.held().loops(), loops);
        }
    }

    /** So many of them, or as many as there are. */
    private int needed(Runs runs, int loops, Check check) {
        if (runs.loops() < loops) {
            needle.misfit(check, runs.loops(), loops);
        }
        return Math.min(loops, runs.loops());
    }
}
