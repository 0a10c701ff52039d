package turnheel.exchange.pdf;

import com.openhtmltopdf.extend.FSTextBreaker;

/** Lets a line break after a blank and nowhere else, as the texts of documents promise. */
final class BlankBreaks implements FSTextBreaker {

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
        int blank = text.indexOf(' ', place);
        place = blank < 0 ? text.length() : blank + 1;
        return place;
    }
}
