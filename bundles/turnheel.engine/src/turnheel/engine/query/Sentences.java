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
        return switch (query.place()) {
            case Place.Row(var key) when OwnRow.isOwn(key) -> {
                // a query does not hold the label of the row, and the key is the designer's own word as well
                yield MessageFormat.format(pattern, key.name(), key.name(), query.expected(), query.found(), "");
            }
            case Place.Row(var key) -> {
                Parameter parameter = Catalogue.parameter(key);
                yield MessageFormat.format(pattern, parameter.label(), key.name(), query.expected(), query.found(),
                        parameter.unit().symbol());
            }
            case Place.Text text -> MessageFormat.format(pattern, "", "", query.expected(), query.found(), "");
        };
    }
}
