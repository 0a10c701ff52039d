package turnheel.engine.shaping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Reads the knitting of somebody who lost the place: from the loops on the needle to the rounds that may just have been
 * worked. Where a part has one round of a count, the answer is one; else the {@link Sign} tells them apart.
 */
public final class RoundFinder {

    /** A count that is no round's, and the nearest places from which one slip leads to it. */
    public record Slip(Kind kind, Place place, int stitches) {

        /** What went wrong. */
        public enum Kind {
            /** Yarn-overs were left out, which shows on the round that closes the others. */
            YARN_OVER_OMITTED,
            /** Increases of another kind were left out. */
            INCREASE_OMITTED,
            /** Decreases were left out. */
            DECREASE_MISSED,
            /** Decreases were worked that the round does not have. */
            DECREASE_DOUBLED
        }
    }

    private final List<Place> places;

    private RoundFinder(List<Place> places) {
        this.places = places;
    }

    /** A finder for one size. */
    public static RoundFinder of(List<PartRounds> sock) {
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < sock.size(); i++) {
            stretches(sock.get(i), firstRound(sock.subList(i + 1, sock.size())), places);
        }
        return new RoundFinder(List.copyOf(places));
    }

    private static Optional<Place.Next> firstRound(List<PartRounds> parts) {
        return parts.stream().filter(part -> !part.rounds().isEmpty()).findFirst()
                .map(part -> new Place.Next(part.part(), part.rounds().getFirst()));
    }

    private static void stretches(PartRounds part, Optional<Place.Next> after, List<Place> places) {
        List<Round> rounds = part.rounds();
        int from = 0;
        for (int to = 1; to <= rounds.size(); to++) {
            if (to == rounds.size() || !alike(rounds.get(from), rounds.get(to))) {
                Optional<Place.Next> next = to == rounds.size() ? after
                        : Optional.of(new Place.Next(part.part(), rounds.get(to)));
                places.add(new Place(part.part(), rounds.get(from), rounds.get(to - 1), to - from, next));
                from = to;
            }
        }
    }

    private static boolean alike(Round one, Round other) {
        return one.kind() == other.kind() && one.stitches() == other.stitches()
                && one.openYarnOvers() == other.openYarnOvers() && one.steps().equals(other.steps());
    }

    /** Every place of the size, in the order of knitting: the table to look a count up in. */
    public List<Place> table() {
        return places;
    }

    /**
     * The places with so many loops on the needle.
     *
     * @param stitches all loops, open yarn-overs included
     * @param openYarnOvers how many of them are yarn-overs that no round has closed; empty when the knitter did not look
     */
    public List<Place> find(int stitches, OptionalInt openYarnOvers) {
        return places.stream().filter(place -> place.stitches() == stitches
                && (openYarnOvers.isEmpty() || place.openYarnOvers() == openYarnOvers.getAsInt())).toList();
    }

    /**
     * The likeliest slips that lead to a count which no round has: as few stitches as can be, and never more than half of
     * what the round changes, since the other round is nearer then.
     */
    public List<Slip> slips(int stitches) {
        List<Slip> slips = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            Optional<Place> before = i == 0 ? Optional.empty() : Optional.of(places.get(i - 1));
            slip(places.get(i), before, stitches).ifPresent(slips::add);
        }
        int fewest = slips.stream().mapToInt(Slip::stitches).min().orElse(0);
        return slips.stream().filter(slip -> slip.stitches() == fewest).toList();
    }

    private static Optional<Slip> slip(Place place, Optional<Place> before, int stitches) {
        int missing = place.stitches() - stitches;
        int change = place.change();
        if (change == 0 && before.isPresent() && before.get().part() == place.part()
                && before.get().openYarnOvers() > 0 && missing > 0 && 2 * missing <= before.get().change()) {
            return Optional.of(new Slip(Slip.Kind.YARN_OVER_OMITTED, place, missing));
        }
        boolean isShaping = place.first().kind() == RoundKind.INCREASE || place.first().kind() == RoundKind.DECREASE;
        if (!isShaping || missing == 0 || 2 * Math.abs(missing) > Math.abs(change)) {
            return Optional.empty();
        }
        if (change > 0) {
            Slip.Kind kind = place.openYarnOvers() > 0 ? Slip.Kind.YARN_OVER_OMITTED : Slip.Kind.INCREASE_OMITTED;
            return missing > 0 ? Optional.of(new Slip(kind, place, missing)) : Optional.empty();
        }
        return Optional.of(new Slip(missing < 0 ? Slip.Kind.DECREASE_MISSED : Slip.Kind.DECREASE_DOUBLED, place,
                Math.abs(missing)));
    }
}
