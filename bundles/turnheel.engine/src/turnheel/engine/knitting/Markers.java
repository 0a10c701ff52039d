package turnheel.engine.knitting;

import turnheel.engine.query.Check;

/** The markers of a needle. */
final class Markers {

    private final Needle needle;

    Markers(Needle needle) {
        this.needle = needle;
    }

    /** A marker after every so many loops of the whole round; others are taken off. */
    void markEvery(int loops) {
        if (needle.left().loops() == 0) {
            needle.left().appendFromFar(needle.right());
        }
        if (needle.right().loops() > 0 || loops == 0) {
            needle.misfit(Check.TEXT_ROUND, needle.loops(), needle.right().loops());
            return;
        }
        if (needle.left().loops() % loops != 0) {
            needle.misfit(Check.TEXT_REPEAT, loops, needle.left().loops() % loops);
        }
        removeMarkers();
        Runs marked = new Runs();
        while (needle.left().loops() > 0) {
            needle.left().moveFar(Math.min(loops, needle.left().loops()), marked, needle.effort());
            marked.pushFar(Loop.MARKER, 0);
        }
        needle.left(marked);
        needle.beginRow();
    }

    /** At the beginning of a round this is the place where it ends. */
    void placeMarker() {
        if (needle.right().loops() == 0 && !needle.isFlat()) {
            needle.left().pushFar(Loop.MARKER, 0);
        } else {
            needle.right().push(Loop.MARKER, 0);
        }
    }

    /** Where the round begins one knows the place without a marker. */
    void slipMarker() {
        if (needle.left().startsWith(Loop.GAP)) {
            needle.left().pop(0);
            needle.noteHole(Check.TEXT_GAP);
        }
        if (needle.left().startsWith(Loop.MARKER)) {
            needle.left().pop(0);
            needle.right().push(Loop.MARKER, 0);
        } else if (isEndOfRound()) {
            needle.implyMarker();
        } else {
            needle.misfit(Check.TEXT_MARKER, "", "");
        }
    }

    void removeMarker() {
        if (needle.left().startsWith(Loop.MARKER)) {
            needle.left().pop(0);
        } else if (needle.right().startsWith(Loop.MARKER)) {
            needle.right().pop(0);
        } else if (needle.right().loops() == 0 && needle.left().endsWith(Loop.MARKER)) {
            needle.left().popFar(0);
        } else if (!isEndOfRound()) {
            needle.misfit(Check.TEXT_MARKER, "", "");
        }
    }

    private boolean isEndOfRound() {
        return needle.left().loops() == 0 || needle.right().loops() == 0 || needle.isAtStart();
    }

    void removeMarkers() {
        needle.left().remove(Loop.MARKER);
        needle.right().remove(Loop.MARKER);
    }
}
