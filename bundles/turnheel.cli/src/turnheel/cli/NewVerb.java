package turnheel.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import com.fasterxml.jackson.core.JsonGenerator;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import turnheel.engine.checks.Checks;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Direction;
import turnheel.engine.design.Gauge;
import turnheel.engine.design.Increase;
import turnheel.engine.design.LegCount;
import turnheel.engine.design.Length;
import turnheel.engine.design.LengthUnit;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.Role;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.Size;
import turnheel.engine.design.SockLength;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.design.TurnMethod;
import turnheel.engine.yarn.Patterns;
import turnheel.exchange.sizes.SizeTables;
import turnheel.model.DocumentException;
import turnheel.model.Documents;
import turnheel.model.PatternFiles;
import turnheel.model.pattern.Pattern;

/** {@code new}: a pattern file from options, with a usual choice for everything but the sizes. */
@Command(name = "new", abbreviateSynopsis = true)
final class NewVerb extends Verb {

    private static final Length TEN_CENTIMETRES = new Length(10, LengthUnit.CENTIMETRE);

    @Mixin
    private PatternArgument pattern;

    private final Map<PatternOption, String> given = new EnumMap<>(PatternOption.class);

    @Option(names = "--title", order = 10, paramLabel = "TEXT")
    private void title(String value) {
        given.put(PatternOption.TITLE, value);
    }

    @Option(names = "--direction", order = 20, paramLabel = "WORD")
    private void direction(String value) {
        given.put(PatternOption.DIRECTION, value);
    }

    @Option(names = "--gauge", order = 30, paramLabel = "GAUGE")
    private void gauge(String value) {
        given.put(PatternOption.GAUGE, value);
    }

    @Option(names = "--toe", order = 40, paramLabel = "KIND")
    private void toe(String value) {
        given.put(PatternOption.TOE, value);
    }

    @Option(names = "--increase", order = 50, paramLabel = "WORD")
    private void increase(String value) {
        given.put(PatternOption.INCREASE, value);
    }

    @Option(names = "--cast-on", order = 52, paramLabel = "WORD")
    private void castOn(String value) {
        given.put(PatternOption.CAST_ON, value);
    }

    @Option(names = "--lean", order = 54, paramLabel = "WORD")
    private void lean(String value) {
        given.put(PatternOption.LEAN, value);
    }

    @Option(names = "--heel", order = 60, paramLabel = "KIND")
    private void heel(String value) {
        given.put(PatternOption.HEEL, value);
    }

    @Option(names = "--turn", order = 70, paramLabel = "WORD")
    private void turn(String value) {
        given.put(PatternOption.TURN, value);
    }

    @Option(names = "--heel-turn", order = 80, paramLabel = "WORD")
    private void heelTurn(String value) {
        given.put(PatternOption.HEEL_TURN, value);
    }

    @Option(names = "--flap", order = 90, paramLabel = "LENGTH")
    private void flap(String value) {
        given.put(PatternOption.FLAP, value);
    }

    @Option(names = "--flap-fabric", order = 92, paramLabel = "WORD")
    private void flapFabric(String value) {
        given.put(PatternOption.FLAP_FABRIC, value);
    }

    @Option(names = "--flap-edge", order = 94, paramLabel = "WORD")
    private void flapEdge(String value) {
        given.put(PatternOption.FLAP_EDGE, value);
    }

    @Option(names = "--pick-up", order = 96, paramLabel = "WORD")
    private void pickUp(String value) {
        given.put(PatternOption.PICK_UP, value);
    }

    @Option(names = "--cap", order = 100, paramLabel = "WORD")
    private void cap(String value) {
        given.put(PatternOption.CAP, value);
    }

    @Option(names = "--leg", order = 110, paramLabel = "KIND")
    private void leg(String value) {
        given.put(PatternOption.LEG, value);
    }

    @Option(names = "--length", order = 120, paramLabel = "WORD")
    private void length(String value) {
        given.put(PatternOption.LENGTH, value);
    }

    @Option(names = "--leg-count", order = 130, paramLabel = "WORD")
    private void legCount(String value) {
        given.put(PatternOption.LEG_COUNT, value);
    }

    @Option(names = "--cuff", order = 140, paramLabel = "KIND")
    private void cuff(String value) {
        given.put(PatternOption.CUFF, value);
    }

    @Option(names = "--cuff-adjusts", order = 150, paramLabel = "WORD")
    private void cuffAdjusts(String value) {
        given.put(PatternOption.CUFF_ADJUSTS, value);
    }

    @Option(names = "--stitch-pattern", order = 160, paramLabel = "PATTERN")
    private void stitchPattern(String value) {
        given.put(PatternOption.STITCH_PATTERN, value);
    }

    @Option(names = "--stitch-pattern-rows", order = 160, paramLabel = "ROWS")
    private void stitchPatternRows(List<String> values) {
        given.put(PatternOption.STITCH_PATTERN_ROWS, String.join(" // ", values));
    }

    @Option(names = "--foot-length-mode", order = 161, paramLabel = "WORD")
    private void footLengthMode(String value) {
        given.put(PatternOption.FOOT_LENGTH_MODE, value);
    }

    @Option(names = "--leg-length-mode", order = 162, paramLabel = "WORD")
    private void legLengthMode(String value) {
        given.put(PatternOption.LEG_LENGTH_MODE, value);
    }

    @Option(names = "--cuff-length-mode", order = 163, paramLabel = "WORD")
    private void cuffLengthMode(String value) {
        given.put(PatternOption.CUFF_LENGTH_MODE, value);
    }

    @Option(names = "--snap", order = 164, paramLabel = "WORD")
    private void snap(String value) {
        given.put(PatternOption.SNAP, value);
    }

    @Option(names = "--yarn", order = 170, paramLabel = "YARN")
    private void yarns(List<String> values) {
        give(PatternOption.YARN, values);
    }

    @Option(names = "--colour", order = 171, paramLabel = "COLOUR")
    private void colours(List<String> values) {
        give(PatternOption.COLOUR, values);
    }

    @Option(names = "--notion", order = 172, paramLabel = "TEXT")
    private void notions(List<String> values) {
        give(PatternOption.NOTION, values);
    }

    @Option(names = "--needle", order = 173, paramLabel = "LENGTH")
    private void needle(String value) {
        given.put(PatternOption.NEEDLE, value);
    }

    @Option(names = "--swatch", order = 180, paramLabel = "SWATCH")
    private void swatch(String value) {
        given.put(PatternOption.SWATCH, value);
    }

    @Option(names = "--cuff-height", order = 190, paramLabel = "LENGTH")
    private String cuffHeight;

    @Option(names = "--sizes", order = 200, paramLabel = "TABLE")
    private String table;

    @Option(names = "--size", order = 210, paramLabel = "SIZE")
    private List<String> sizes = List.of();

    @Option(names = "--own-row", order = 220, paramLabel = "ROW")
    private List<String> ownRows = List.of();

    @Option(names = "--force", order = 230)
    private boolean force;

    NewVerb(Output output) {
        super(output);
    }

    @Override
    public Integer call() throws Refusal {
        Path file = pattern.path();
        requireFree(file);
        Pattern document = Documents.pattern(usual(sizes(), title(file)));
        for (Map.Entry<PatternOption, String> option : given.entrySet()) {
            option.getKey().write(document, "--" + option.getKey().word(), option.getValue());
        }
        if (cuffHeight != null) {
            Quantity height = cuffHeight();
            document.getSizes().forEach(size -> Documents.setOverride(size, Catalogue.CUFF_HEIGHT.key(), height));
        }
        for (String row : ownRows) {
            addOwnRow(document, row);
        }
        Design design = PatternArgument.design(document);
        try {
            PatternFiles.save(document, file);
        } catch (DocumentException unwritable) {
            throw new Refusal(unwritable);
        }
        List<String> labels = design.sizes().stream().map(Size::label).toList();
        if (isJson()) {
            output().document(Json.document("turnheel-new/1", json -> write(design.title(), labels, json)));
        } else {
            output().line(Words.NEW_WRITTEN.with(pattern.name(), labels.size(), String.join(", ", labels)));
        }
        return Verdict.noted(Checks.of(Patterns.grade(design)), output(), pattern.name());
    }

    /** What is given several times is one list. */
    private void give(PatternOption option, List<String> values) {
        given.put(option, String.join(";", values));
    }

    private static void addOwnRow(Pattern document, String text) throws Refusal {
        OwnRowText row = OwnRowText.parse(text);
        if (row.formula().isEmpty()) {
            throw new Refusal(Words.NOT_AN_OWN_ROW.with(text));
        }
        if (document.getOwnRows().stream().anyMatch(other -> other.getKey().name().equals(row.key()))) {
            throw new Refusal(Words.OWN_ROW_TWICE.with(row.key(), row.key()));
        }
        row.applyTo(document);
    }

    private void requireFree(Path file) throws Refusal {
        if (Files.isDirectory(file)) {
            throw new Refusal(Words.IS_A_FOLDER.with(pattern.name()));
        }
        if (!force && Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new Refusal(Words.EXISTS.with(pattern.name()));
        }
    }

    private List<Size> sizes() throws Refusal {
        if (table != null && !sizes.isEmpty()) {
            throw new Refusal(Words.SIZES_BOTH.text());
        }
        if (table == null && sizes.isEmpty()) {
            throw new Refusal(Words.SIZES_MISSING.with(String.join(" ", SizeTables.ids())));
        }
        return table == null ? SizeOption.sizes(sizes) : SizesVerb.table(table).sizes();
    }

    private static String title(Path file) {
        String name = file.getFileName().toString();
        return name.substring(0, name.length() - PatternFiles.EXTENSION.length() - 1);
    }

    /** What most sock patterns have; the gauge is that of common sock yarn. */
    private static Design usual(List<Size> sizes, String title) {
        return new Design(title, Direction.TOE_UP, new Gauge(32, TEN_CENTIMETRES), new Gauge(44, TEN_CENTIMETRES),
                new RoundToe(4, Increase.YARN_OVER), new ShortRowHeel(TurnMethod.WRAPPED),
                new StraightLeg(SockLength.CREW, LegCount.AS_FOOT), new RibCuff(2, 2, false), List.of(), sizes);
    }

    private Quantity cuffHeight() throws Refusal {
        try {
            Quantity height = Quantity.parse(cuffHeight);
            Catalogue.CUFF_HEIGHT.require(Role.RULE, height);
            return height;
        } catch (IllegalArgumentException refused) {
            throw new Refusal(Words.VALUE_REFUSED.with("--cuff-height", refused.getMessage()));
        }
    }

    private void write(String title, List<String> labels, JsonGenerator json) throws IOException {
        json.writeStringField("file", pattern.name());
        json.writeStringField("title", title);
        Json.texts(json, "sizes", labels);
    }
}
