package turnheel.exchange.pdf;

import com.openhtmltopdf.extend.FSTextBreaker;

import turnheel.engine.wording.NoBreak;

/** Lets a line end where the texts of documents promise, and nowhere else. */
final class LineEnds implements FSTextBreaker {

    private static final int DONE = -1;

    private String text = "";
    private int place;

    @Override
    public void setText(String newText) {
        text = newText;
        place = 0;
    }

    @Override
    public int next() {
        if (place >= text.length()) {
            return DONE;
        }
        place = NoBreak.nextEnd(text, place);
        return place;
    }
}
