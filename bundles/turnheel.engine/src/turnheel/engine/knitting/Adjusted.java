package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Needles as they may be when a text is right and the loops on one's own needle are not. */
final class Adjusted {

    private Adjusted() {
    }

    /**
     * The ways in which the difference may lie between the markers, the likeliest first: the same in every section, half
     * of it in the first and last one, all in the last, the first, or one in the middle.
     */
    static List<Needle> to(Needle needle, int loops) {
        List<Needle> needles = new ArrayList<>();
        int difference = loops - needle.loops();
        int sections = sections(needle);
        if (difference == 0) {
            needles.add(needle);
            return needles;
        }
        if (Math.abs(difference) > Effort.MOST_LOOPS) {
            return needles;
        }
        if (difference % sections == 0) {
            int[] each = new int[sections];
            Arrays.fill(each, difference / sections);
            add(needle, each, needles);
        }
        if (sections > 1 && difference % 2 == 0) {
            int[] ends = new int[sections];
            ends[0] = difference / 2;
            ends[sections - 1] += difference / 2;
            add(needle, ends, needles);
        }
        for (int section : List.of(sections - 1, 0, sections / 2)) {
            int[] one = new int[sections];
            one[section] = difference;
            add(needle, one, needles);
        }
        if (needles.isEmpty()) {
            Needle bare = needle.copy(needle.effort());
            bare.castOn(loops);
            bare.beginRound(false);
            needles.add(bare);
        }
        return needles;
    }

    private static int sections(Needle needle) {
        int markers = 0;
        Runs left = needle.left();
        for (int place = 0; place < left.size() - 1; place++) {
            if (left.kind(place) == Loop.MARKER) {
                markers++;
            }
        }
        return markers + 1;
    }

    private static void add(Needle needle, int[] more, List<Needle> needles) {
        Needle changed = needle.copy(needle.effort());
        if (changed.left().addToSections(more)) {
            needles.add(changed);
        }
    }
}
