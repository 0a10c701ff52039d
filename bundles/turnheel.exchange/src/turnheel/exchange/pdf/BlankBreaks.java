package turnheel.exchange.pdf;

import com.openhtmltopdf.extend.FSTextBreaker;

/** Lets a line break after a blank or the mark for a break and nowhere else, as the texts of documents promise. */
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
        while (place < text.length() && text.charAt(place) != ' ' && text.charAt(place) != PrintedText.BREAK) {
            place++;
        }
        place = Math.min(place + 1, text.length());
        return place;
    }
}
