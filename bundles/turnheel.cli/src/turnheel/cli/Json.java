package turnheel.cli;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Collection;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;

/**
 * Documents for scripts. Each names its schema and the schema's version in its first member; the schema is a file in
 * the folder {@code schemas} beside this class. A new member needs no new version, a changed or dropped one does.
 */
final class Json {

    private static final Separators SEPARATORS = Separators.createDefaultInstance()
            .withObjectFieldValueSpacing(Separators.Spacing.AFTER);

    /** Writes the members after the first. */
    interface Body {
        void write(JsonGenerator json) throws IOException;
    }

    private Json() {
    }

    /** A whole document with a line end. */
    static String document(String schema, Body body) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.setPrettyPrinter(new DefaultPrettyPrinter(SEPARATORS)
                    .withObjectIndenter(new DefaultIndenter("  ", "\n")));
            json.writeStartObject();
            json.writeStringField("schema", schema);
            body.write(json);
            json.writeEndObject();
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory failed", impossible);
        }
        return text + "\n";
    }

    /** A number as exact as it is; a whole one without a decimal point. */
    static void number(JsonGenerator json, double value) throws IOException {
        if (value == Math.rint(value) && Math.abs(value) < Long.MAX_VALUE) {
            json.writeNumber((long) value);
        } else {
            json.writeNumber(value);
        }
    }

    static void texts(JsonGenerator json, String member, Collection<?> texts) throws IOException {
        json.writeArrayFieldStart(member);
        for (Object text : texts) {
            json.writeString(text.toString());
        }
        json.writeEndArray();
    }
}
