package turnheel.exchange.handout;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.shaping.Place;
import turnheel.engine.shaping.Round;
import turnheel.engine.writing.PlaceText;
import turnheel.engine.writing.RoundText;
import turnheel.exchange.document.Block;

/**
 * The round finder as a table. Flat rows that leave the same loops share a line: a count cannot tell them apart, the
 * turns under the needle do.
 */
final class FinderTable {

    private static final int OPEN = 2;

    private FinderTable() {
    }

    static Block.Table of(List<Place> places, String caption) {
        List<Block.Row> rows = new ArrayList<>();
        List<Round> rounds = places.stream().map(Place::first).toList();
        int from = 0;
        for (int to = 1; to <= places.size(); to++) {
            if (to == places.size() || !(sameLine(places.get(from), places.get(to))
                    && RoundsTable.shareALine(rounds, to))) {
                rows.add(row(places.get(from), places.get(to - 1)));
                from = to;
            }
        }
        List<String> head = List.of(Words.text("finder.round"), Words.text("finder.stitches"),
                Words.text("finder.open"), Words.text("finder.lookFor"), Words.text("finder.next"));
        boolean noneOpen = places.stream().allMatch(place -> place.openYarnOvers() == 0);
        return noneOpen ? new Block.Table(caption, without(head), rows.stream()
                .map(row -> new Block.Row(without(row.cells()))).toList()) : new Block.Table(caption, head, rows);
    }

    /** Without the column of open yarn-overs, in a technique that has none. */
    private static <T> List<T> without(List<T> cells) {
        List<T> others = new ArrayList<>(cells);
        others.remove(OPEN);
        return others;
    }

    private static boolean sameLine(Place one, Place other) {
        return RoundsTable.isFlat(one.first()) && one.first().kind() == other.first().kind()
                && one.part() == other.part() && one.stitches() == other.stitches()
                && one.openYarnOvers() == other.openYarnOvers();
    }

    private static Block.Row row(Place first, Place last) {
        String open = first.openYarnOvers() == 0 ? "" : Integer.toString(first.openYarnOvers());
        return new Block.Row(List.of(new Block.Cell.Words(rounds(first.first(), last.last())),
                new Block.Cell.Figure(Integer.toString(first.stitches())),
                open.isEmpty() ? new Block.Cell.Nothing() : new Block.Cell.Figure(open),
                new Block.Cell.Words(lookFor(first, last)),
                last.next().<Block.Cell>map(next -> new Block.Cell.Words(next(last, next)))
                        .orElseGet(Block.Cell.Nothing::new)));
    }

    private static String lookFor(Place first, Place last) {
        return !RoundsTable.isFlat(first.first()) ? PlaceText.of(first.sign()) : Words.text("finder.worked",
                RoundsTable.range(RoundsTable.takes(first.first()), RoundsTable.takes(last.last())));
    }

    /** {@code 5}, {@code 5–8}, or the name of a round that patterns do not number. */
    static String rounds(Round first, Round last) {
        if (first.number() == 0) {
            return Words.text("rounds." + first.kind().name());
        }
        return first.number() == last.number() ? Integer.toString(first.number())
                : first.number() + "–" + last.number();
    }

    private static String next(Place place, Place.Next next) {
        String round = rounds(next.round(), next.round());
        String name = next.part() == place.part() ? round
                : Words.text("finder.nextPart", Words.text("part." + next.part().name()), round);
        return Words.text("finder.next.worked", name, RoundText.of(next.round()));
    }
}
