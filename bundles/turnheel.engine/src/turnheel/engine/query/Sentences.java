package turnheel.engine.query;

import java.text.MessageFormat;
import java.util.ResourceBundle;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.OwnRow;
import turnheel.engine.design.Parameter;

/** The one sentence of a query, for a person; the words are in {@code sentences.properties}. */
public final class Sentences {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.engine.query.sentences");

    private Sentences() {
    }

    /** The sentence, without the sizes: every place that shows a query has a column or a prefix for them. */
    public static String of(Query query) {
        String pattern = WORDS.getString(query.check().id());
        if (OwnRow.isOwn(query.key())) {
            // a query does not hold the label of the row, and the key is the designer's own word as well
            String row = query.key().name();
            return MessageFormat.format(pattern, row, row, query.expected(), query.found(), "");
        }
        Parameter parameter = Catalogue.parameter(query.key());
        return MessageFormat.format(pattern, parameter.label(), query.key().name(), query.expected(), query.found(),
                parameter.unit().symbol());
    }
}
