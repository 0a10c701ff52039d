package turnheel.exchange.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

import turnheel.exchange.document.Document;
import turnheel.exchange.drawing.SvgWriter;

/** The style sheet of a page: colours of the pictures, the shared {@code page.css}, and the running title on paper. */
final class PageStyle {

    /** In letters; the running title is one line. */
    private static final int LONGEST_TITLE = 70;

    private PageStyle() {
    }

    static String of(Document document) {
        return SvgWriter.pageStyle() + shared() + """
                @page{@top-left{content:%s}}
                @page:first{@top-left{content:none}}
                """.formatted(quoted(cut(document.title())));
    }

    private static String shared() {
        try (InputStream sheet = PageStyle.class.getResourceAsStream("page.css")) {
            return new String(sheet.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("page.css is part of this package", unreadable);
        }
    }

    private static String cut(String title) {
        return title.codePointCount(0, title.length()) <= LONGEST_TITLE ? title
                : title.substring(0, title.offsetByCodePoints(0, LONGEST_TITLE - 1)).strip() + "…";
    }

    /** A CSS string in which every letter that could mean something to CSS, HTML or XML is written by its number. */
    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(letter -> {
            boolean plain = letter == ' ' || letter < 0x80 && Character.isLetterOrDigit(letter);
            if (plain) {
                quoted.appendCodePoint(letter);
            } else {
                quoted.append("\\%x ".formatted(Character.isISOControl(letter) ? ' ' : letter));
            }
        });
        return quoted.append('"').toString();
    }
}
