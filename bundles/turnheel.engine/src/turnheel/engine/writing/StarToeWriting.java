package turnheel.engine.writing;

import java.util.List;

/** A star toe: shaping rounds with as many plain rounds between as its sections allow, at most {@code plainMost}. */
final class StarToeWriting {

    private final SectionsWriting sections;
    private final EachSize plainMost;
    private final EachSize widestSection;
    private final Names names;

    /** @param widestSection stitches of a section where the toe is widest */
    StarToeWriting(SectionsWriting sections, EachSize plainMost, EachSize widestSection, Names names) {
        this.sections = sections;
        this.plainMost = plainMost;
        this.widestSection = widestSection;
        this.names = names;
    }

    /** From one stitch a section, with markers placed. */
    void widen(Passage passage) {
        // the first increase has no plain round after it, so the second one closes its yarn-overs
        sections.widenEveryRound(passage, widestSection.minus(1).least(widestSection.map(section -> 2)), names);
        // from here on each shaping round has one plain round more than the one before, up to the most
        int from = Math.max(plainMost.greatest() + 2, 3);
        for (int after = 4; after <= Math.min(from, widestSection.greatest()); after++) {
            int most = after - 2;
            EachSize plain = plainMost.map(usual -> Math.min(usual, most));
            sections.widenSpaced(passage.only(widestSection.atLeast(after)), plain.map(rounds -> 1), plain, names);
        }
        Passage rest = passage.only(widestSection.atLeast(from + 1));
        if (from == 3) {
            sections.widenSpaced(rest, widestSection.minus(from), plainMost, names);
        } else {
            rest.againLast(plainMost.plus(1), widestSection.minus(from), sections.sections());
        }
    }

    /** Down to one stitch a section, with markers placed. */
    void narrow(Passage passage) {
        EachSize fewer = sections.sections().times(-1);
        EachSize room = widestSection.minus(2);
        EachSize firstPlain = plainMost.least(room);
        passage.only(room.atLeast(0)).named(names.decrease(), fewer, sections.narrow());
        passage.even(firstPlain, false);
        EachSize regular = room.minus(plainMost);
        passage.againLast(plainMost.plus(1), regular, fewer);
        for (int plain = Math.max(0, firstPlain.greatest() - 1); plain >= 0; plain--) {
            int left = plain;
            Passage some = passage.only(firstPlain.where(first -> first > left));
            EachSize once = firstPlain.map(first -> 1);
            some.again(List.of(names.decrease()), once, fewer);
            some.even(once.times(plain), false);
        }
    }
}
