package turnheel.cli;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;

import picocli.CommandLine.Option;

import turnheel.engine.design.Spelling;
import turnheel.engine.wording.HouseStyle;
import turnheel.engine.wording.HouseStyles;

/** The house style of what a verb writes: a shipped one by its name, or a file of one's own. */
final class StyleOption {

    /** A file of a style is told from a name by its ending. */
    private static final String STYLE_ENDING = ".properties";

    @Option(names = "--style", order = 2, paramLabel = "STYLE", descriptionKey = "style")
    private String style;

    @Option(names = "--tables", order = 2, paramLabel = "CHARACTERS", descriptionKey = "tables")
    private Integer longestList;

    /** The first option that was given; empty where none was. */
    Optional<String> given() {
        return style != null ? Optional.of("--style") : longestList != null ? Optional.of("--tables") : Optional.empty();
    }

    /** The style, the usual one when none is asked for. */
    HouseStyle chosen() throws Refusal {
        HouseStyle named = named();
        if (longestList == null) {
            return named;
        }
        if (longestList < HouseStyle.NARROWEST || longestList > HouseStyle.WIDEST) {
            throw new Refusal(Words.TABLES_RANGE.with(longestList, HouseStyle.NARROWEST, HouseStyle.WIDEST));
        }
        return named.inColumn(longestList);
    }

    private HouseStyle named() throws Refusal {
        if (style == null) {
            return HouseStyles.usual();
        }
        if (HouseStyles.SHIPPED.contains(style)) {
            return HouseStyles.shipped(style);
        }
        if (!style.toLowerCase(Locale.ROOT).endsWith(STYLE_ENDING)) {
            throw new Refusal(UsageErrors.didYouMean(
                    Words.STYLE_UNKNOWN.with(style, String.join(", ", HouseStyles.SHIPPED), STYLE_ENDING),
                    Spelling.suggestion(style, HouseStyles.SHIPPED)));
        }
        try {
            return HouseStyles.read(style, entries(PatternArgument.path(style)));
        } catch (IllegalArgumentException refused) {
            throw new Refusal(Words.STYLE_REFUSED.with(style, refused.getMessage()));
        }
    }

    /** @throws IllegalArgumentException when a Unicode escape in it is malformed */
    private Map<String, String> entries(Path file) throws Refusal {
        if (Files.isDirectory(file)) {
            throw new Refusal(Words.IS_A_FOLDER.with(style));
        }
        if (!Files.exists(file)) {
            throw new Refusal(Words.NO_SUCH_FILE.with(style));
        }
        Properties properties = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            properties.load(reader);
        } catch (MalformedInputException notUtf8) {
            throw new Refusal(Words.STYLE_NOT_UTF8.with(style));
        } catch (IOException failed) {
            throw new Refusal(Words.STYLE_REFUSED.with(style, failed.getMessage()));
        }
        Map<String, String> entries = new TreeMap<>();
        properties.stringPropertyNames().forEach(key -> entries.put(key, properties.getProperty(key)));
        return entries;
    }
}
