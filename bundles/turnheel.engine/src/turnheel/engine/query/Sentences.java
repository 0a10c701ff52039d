package turnheel.engine.query;

import java.text.MessageFormat;
import java.util.ResourceBundle;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Parameter;

/** The one sentence of a query, for a person; the words are in {@code sentences.properties}. */
public final class Sentences {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("turnheel.engine.query.sentences");

    private Sentences() {
    }

    /** The sentence, without the sizes: every place that shows a query has a column or a prefix for them. */
    public static String of(Query query) {
        Parameter parameter = Catalogue.parameter(query.key());
        String pattern = WORDS.getString(query.check().id());
        return MessageFormat.format(pattern, parameter.label(), query.key().name(), query.expected(), query.found(),
                parameter.unit().symbol());
    }
}
