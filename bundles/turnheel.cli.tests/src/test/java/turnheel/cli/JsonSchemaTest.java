package turnheel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every JSON document holds to its schema, as another program would check it. */
class JsonSchemaTest {

    @TempDir
    private Path folder;

    private static String text(String name) throws IOException {
        try (InputStream in = Main.class.getResourceAsStream("schemas/" + name + ".json")) {
            assertNotNull(in, "no schema " + name);
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static Schema schema(String name) throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(text(name));
    }

    /** The document names its schema first, and holds to it. */
    private static void holds(String name, Object... command) throws IOException {
        Run run = Run.of(command);
        assertEquals("schema", run.json().fieldNames().next());
        assertEquals(name.replaceFirst("-1$", "/1"), run.json().get("schema").asText());
        assertEquals(List.of(), schema(name).validate(run.out(), InputFormat.JSON));
        assertEquals('\n', run.out().charAt(run.out().length() - 1));
    }

    @Test
    void everyDocumentHoldsToItsSchema() throws IOException {
        Path file = folder.resolve("gull.turnheel");
        holds("turnheel-new-1", "new", file, "--size", Patterns.M, "--size",
                "1–2: foot-length=240mm foot-circumference=225mm", "--json");
        holds("turnheel-set-1", "set", file, "title=", "foot.stitches[M]=66", "body.legHeight[M]=", "--json");
        holds("turnheel-grade-1", "grade", file, "--json");
        holds("turnheel-set-1", "set", file, "own.half: Half = foot.stitches/2", "own.bad=(", "--json");
        holds("turnheel-grade-1", "grade", file, "--json");
        holds("turnheel-why-1", "grade", file, "--json", "--why", "own.half[M]");
        holds("turnheel-options-1", "grade", file, "--json", "--options", "M");
        holds("turnheel-gauges-1", "grade", file, "--json", "--gauges");
        holds("turnheel-why-1", "grade", file, "--json", "--why", "foot.stitches[M]");
        holds("turnheel-why-1", "grade", file, "--json", "--why", "body.footLength[M]");
        holds("turnheel-rounds-1", "rounds", file, "--json", "--size", "M");
        holds("turnheel-rounds-1", "rounds", file, "--json", "--size", "1–2");
        holds("turnheel-text-1", "write", file, "--json");
        holds("turnheel-text-1", "write", file, "--json", "--size", "1–2", "--style", "longhand");
        holds("turnheel-find-round-1", "find-round", file, "--json", "--size", "M");
        holds("turnheel-find-round-1", "find-round", file, "--json", "--size", "M", "--stitches", "43");
        holds("turnheel-queries-1", "check", file, "--json");
        holds("turnheel-queries-1", "check", Files.writeString(folder.resolve("toe.txt"),
                "Toe\nCast on 8 sts.\nRnd 1: K to end. 9 sts.\n"), "--json");
        Path fight = folder.resolve("fight.turnheel");
        Run.of("new", fight, "--size", Patterns.M, "--cuff", "rib-3x3", "--stitch-pattern", "instep: 6+3");
        holds("turnheel-queries-1", "check", fight, "--json");
        holds("turnheel-grade-1", "grade", fight, "--json");
        holds("turnheel-gauges-1", "grade", fight, "--json", "--gauges");
        holds("turnheel-export-1", "export", file, "--to", folder.resolve("gull.csv"), "--json");
        holds("turnheel-document-1", "handout", file, "--json");
        holds("turnheel-document-1", "handout", file, "--practice", "--json");
        holds("turnheel-document-1", "test-knit", file, "--json");
        Path results = folder.resolve("results.csv");
        holds("turnheel-export-1", "test-knit", file, "--to", results, "--json");
        Files.writeString(results, Files.readString(results).replaceFirst("M,foot.stitches,([^,]*),,(\\d+),,",
                "M,foot.stitches,$1,,$2,63,slipped once").replaceFirst("M,testKnit.remarks,Remarks,,,,",
                        "M,testKnit.remarks,Remarks,,,warm,"));
        holds("turnheel-test-knit-1", "test-knit", file, "--results", results, "--json");
        holds("turnheel-batch-1", "batch", folder, "--to", folder.resolve("out"), "--formats", "csv,svg", "--json");
        holds("turnheel-export-1", "export", file, "--each-size", "--to", folder.resolve("gull.svg"), "--json");
        holds("turnheel-sizes-1", "sizes", "--json");
        holds("turnheel-sizes-1", "sizes", "men", "--json");
        holds("turnheel-sizes-1", "sizes", Files.writeString(folder.resolve("own.csv"),
                "size,foot-length\nM,24 cm\nS,22\n"), "--json");
        holds("turnheel-shoe-1", "sizes", "--shoe", "UK 7", "--json");
        Path cuffDown = Patterns.cuffDown(folder);
        holds("turnheel-errata-1", "errata", file, cuffDown, "--json");
        holds("turnheel-rounds-1", "rounds", cuffDown, "--json", "--size", "L");
        Run.of("set", cuffDown, "yarn=Ledge Four: 420m/100g");
        holds("turnheel-yarn-left-1", "rounds", cuffDown, "--json", "--size", "L", "--grams-left", "20");
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"new", "set", "sizes", "shoe", "grade", "why", "options", "gauges", "rounds", "yarn-left",
            "find-round", "text", "queries", "export", "document", "test-knit", "batch", "errata"})
    void theSchemaRefusesWhatIsNoSuchDocument(String name) throws IOException {
        Schema schema = schema("turnheel-" + name + "-1");
        assertFalse(schema.validate("{\"schema\":\"turnheel-%s/2\"}".formatted(name), InputFormat.JSON).isEmpty());
        assertFalse(schema.validate("{\"schema\":\"turnheel-%s/1\"}".formatted(name), InputFormat.JSON).isEmpty());
        JsonNode itself = new ObjectMapper().readTree(text("turnheel-" + name + "-1"));
        assertEquals("urn:turnheel:schema:%s:1".formatted(name), itself.get("$id").asText());
    }
}
