package turnheel.exchange.workbook;

import java.util.HashMap;
import java.util.Map;

import org.apache.poi.xssf.model.SharedStringsTable;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;

/**
 * The texts of one workbook, which keeps each once. A long list of rounds says "k to end" some thousand times; POI would
 * serialize the text each time to find that it is there already.
 */
final class Texts {

    private final SharedStringsTable shared;
    private final Map<String, Integer> known = new HashMap<>();

    Texts(SharedStringsTable shared) {
        this.shared = shared;
    }

    /** The number by which a cell names the text. */
    int number(String text) {
        return known.computeIfAbsent(text, fresh -> shared.addSharedStringItem(new XSSFRichTextString(fresh)));
    }
}
