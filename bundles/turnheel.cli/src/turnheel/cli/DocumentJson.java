package turnheel.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

import com.fasterxml.jackson.core.JsonGenerator;

import turnheel.exchange.document.Block;
import turnheel.exchange.document.Document;

/** A document for scripts: its blocks in order, each with its kind. */
final class DocumentJson {

    private DocumentJson() {
    }

    static String of(Document document) {
        return Json.document("turnheel-document/1", json -> {
            json.writeStringField("title", document.title());
            json.writeStringField("subject", document.subject());
            Json.texts(json, "imprint", document.imprint());
            json.writeArrayFieldStart("blocks");
            for (Block block : document.blocks()) {
                json.writeStartObject();
                write(block, json);
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    private static void write(Block block, JsonGenerator json) throws IOException {
        switch (block) {
            case Block.Heading(int level, String text) -> {
                json.writeStringField("kind", "heading");
                json.writeNumberField("level", level);
                json.writeStringField("text", text);
            }
            case Block.Paragraph paragraph -> {
                json.writeStringField("kind", "paragraph");
                json.writeStringField("purpose", paragraph.purpose().name().toLowerCase(Locale.ROOT));
                json.writeStringField("text", paragraph.text());
            }
            case Block.Entries entries -> {
                json.writeStringField("kind", "entries");
                json.writeBooleanField("numbered", entries.numbered());
                Json.texts(json, "texts", entries.texts());
            }
            case Block.Terms(List<Block.Term> terms) -> {
                json.writeStringField("kind", "terms");
                json.writeArrayFieldStart("terms");
                for (Block.Term term : terms) {
                    json.writeStartObject();
                    json.writeStringField("word", term.word());
                    json.writeStringField("meaning", term.meaning());
                    json.writeEndObject();
                }
                json.writeEndArray();
            }
            case Block.Table table -> write(table, json);
            case Block.Drawn drawn -> {
                json.writeStringField("kind", "drawing");
                json.writeStringField("title", drawn.picture().title());
                json.writeStringField("description", drawn.picture().description());
            }
            case Block.NewPage newPage -> json.writeStringField("kind", "page");
        }
    }

    private static void write(Block.Table table, JsonGenerator json) throws IOException {
        json.writeStringField("kind", "table");
        json.writeStringField("caption", table.caption());
        Json.texts(json, "head", table.head());
        json.writeArrayFieldStart("rows");
        for (Block.Row row : table.rows()) {
            json.writeStartArray();
            for (Block.Cell cell : row.cells()) {
                switch (cell) {
                    case Block.Cell.Words(String text) -> json.writeString(text);
                    case Block.Cell.Figure(String text) -> json.writeString(text);
                    case Block.Cell.Nothing nothing -> json.writeString("");
                    case Block.Cell.Blank blank -> json.writeNull();
                }
            }
            json.writeEndArray();
        }
        json.writeEndArray();
    }
}
