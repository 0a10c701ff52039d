package turnheel.exchange.document;

import java.text.BreakIterator;
import java.text.CharacterIterator;
import java.text.StringCharacterIterator;
import java.util.Objects;
import java.util.TreeSet;

import turnheel.engine.wording.NoBreak;

/** The places where lines may end, as the platform asks for them. */
final class Ends extends BreakIterator {

    private final TreeSet<Integer> ends = new TreeSet<>();
    private CharacterIterator text = new StringCharacterIterator("");
    private int offset;
    private int current;

    @Override
    public void setText(CharacterIterator newText) {
        text = newText;
        StringBuilder whole = new StringBuilder();
        for (char c = newText.first(); c != CharacterIterator.DONE; c = newText.next()) {
            whole.append(c);
        }
        offset = newText.getBeginIndex();
        ends.clear();
        ends.add(offset);
        for (int end = 0; end < whole.length();) {
            end = NoBreak.nextEnd(whole.toString(), end);
            ends.add(offset + end);
        }
        current = offset;
    }

    @Override
    public CharacterIterator getText() {
        return text;
    }

    @Override
    public int first() {
        current = ends.getFirst();
        return current;
    }

    @Override
    public int last() {
        current = ends.getLast();
        return current;
    }

    @Override
    public int next() {
        return following(current);
    }

    @Override
    public int previous() {
        return moved(ends.lower(current));
    }

    @Override
    public int next(int steps) {
        int at = current;
        for (int step = 0; step < Math.abs(steps); step++) {
            at = steps > 0 ? next() : previous();
        }
        return at;
    }

    @Override
    public int following(int place) {
        return moved(ends.higher(place));
    }

    private int moved(Integer place) {
        current = Objects.requireNonNullElse(place, current);
        return place == null ? DONE : place;
    }

    @Override
    public int current() {
        return current;
    }
}
