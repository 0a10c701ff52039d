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
        int regular = plainMost.greatest() + 2;
        for (int after = 4; after <= Math.min(regular, widestSection.greatest()); after++) {
            int most = after - 2;
            sections.widenOnce(passage.only(widestSection.atLeast(after)), plainMost.map(plain -> Math.min(plain, most)), names);
        }
        Passage rest = passage.only(widestSection.atLeast(Math.max(regular, 3) + 1));
        int from = Math.max(regular, 3);
        rest.againLast(plainMost.plus(1), widestSection.minus(from), sections.sections());
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
