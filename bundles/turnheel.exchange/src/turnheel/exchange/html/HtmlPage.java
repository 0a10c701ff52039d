package turnheel.exchange.html;

import java.util.List;
import java.util.stream.Collectors;

import turnheel.exchange.document.Document;
import turnheel.exchange.markup.XmlText;

/**
 * The frame of a page: what it is, where what is in it, the document, who made it. Its markup is HTML and well-formed XML
 * at once, without entities beyond XML's own.
 */
public final class HtmlPage {

    /** Even if markup of somebody else got in, nothing would run or be fetched. */
    private static final String POLICY =
            "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";
    /** With fewer headings one sees them all. */
    private static final int FEWEST_IN_CONTENTS = 3;

    private HtmlPage() {
    }

    /**
     * The page of a document.
     *
     * @param style the style sheet; without {@code <} and {@code &}, so that it means the same in HTML and XML
     * @param figures how its pictures stand in it
     */
    public static String of(Document document, String style, Figures figures) {
        HtmlBlocks blocks = new HtmlBlocks(figures);
        document.blocks().forEach(blocks::add);
        String title = XmlText.escaped(document.title());
        String subject = XmlText.escaped(document.subject());
        return """
                <!DOCTYPE html>
                <html xmlns="http://www.w3.org/1999/xhtml" lang="%s" xml:lang="%s">
                <head>
                <meta charset="utf-8"/>
                <meta http-equiv="Content-Security-Policy" content="%s"/>
                <title>%s</title>
                <meta name="description" content="%s"/>
                <meta name="viewport" content="width=device-width, initial-scale=1"/>
                <meta name="color-scheme" content="light dark"/>
                <style>
                %s</style>
                </head>
                <body>
                <a class="skip" href="#main">%s</a>
                <header>
                <h1>%s</h1>
                <p class="subject">%s</p>
                </header>
                %s<main id="main" tabindex="-1">
                %s</main>
                <footer>
                %s</footer>
                </body>
                </html>
                """.formatted(Document.LANGUAGE, Document.LANGUAGE, POLICY, title, subject, style, Words.text("skip"),
                title, subject, contents(blocks.chapters()), blocks.html(), imprint(document.imprint()));
    }

    private static String contents(List<HtmlBlocks.Chapter> chapters) {
        if (chapters.size() < FEWEST_IN_CONTENTS) {
            return "";
        }
        return chapters.stream()
                .map(chapter -> "<li><a href=\"#%s\">%s</a></li>\n"
                        .formatted(chapter.id(), XmlText.escaped(chapter.heading())))
                .collect(Collectors.joining("", """
                        <nav aria-labelledby="contents">
                        <p id="contents">%s</p>
                        <ul>
                        """.formatted(Words.text("contents")), "</ul>\n</nav>\n"));
    }

    private static String imprint(List<String> lines) {
        return lines.stream().map(line -> "<p>%s</p>\n".formatted(XmlText.escaped(line))).collect(Collectors.joining());
    }
}
