package turnheel.exchange.workbook;

import java.util.HashMap;
import java.util.Map;

import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType;

/**
 * The texts of one workbook. A long list of rounds says "k to end" some thousand times; POI would serialize the text
 * each time to find that it is there already.
 */
final class Texts {

    private final Map<String, Integer> known = new HashMap<>();

    /** Makes the text the value of the cell. */
    void write(XSSFCell cell, String text) {
        Integer place = known.get(text);
        if (place == null) {
            cell.setCellValue(new XSSFRichTextString(text));
            known.put(text, Integer.valueOf(cell.getCTCell().getV()));
        } else {
            cell.getCTCell().setT(STCellType.S);
            cell.getCTCell().setV(place.toString());
        }
    }
}
