package turnheel.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Part;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Role;
import turnheel.engine.design.Size;
import turnheel.engine.term.Key;
import turnheel.exchange.sizes.SizeTableReader;
import turnheel.model.Documents;

/**
 * Reads sizes as they are given to {@code new}: {@code "M: foot-length=240mm foot-circumference=225mm"}. The words are
 * the keys of body and fit without their part, in small letters.
 */
final class SizeOption {

    /** Nothing can be graded without these. */
    private static final List<Parameter> NEEDED = List.of(Catalogue.FOOT_LENGTH);
    /** A value may hold blanks ({@code 9 1/2 in}); it ends where the next word with an equals sign begins. */
    private static final Pattern MEASUREMENT = Pattern.compile(
            "\\s*([^\\s=]+)\\s*=\\s*([^=]*?)\\s*(?=\\s[^\\s=]+\\s*=|$)");

    private SizeOption() {
    }

    /** The sizes in the order in which they were given. */
    static List<Size> sizes(List<String> options) throws Refusal {
        List<Size> sizes = new ArrayList<>();
        for (String option : options) {
            Size size = size(option, sizes.stream().map(Size::id).toList());
            if (sizes.stream().anyMatch(other -> other.label().equals(size.label()))) {
                throw new Refusal(Words.LABEL_TWICE.with(size.label()));
            }
            sizes.add(size);
        }
        return sizes;
    }

    private static Size size(String option, List<String> takenIds) throws Refusal {
        int colon = option.indexOf(':');
        if (colon < 0) {
            throw new Refusal(Words.NOT_A_SIZE.with(option));
        }
        String label = option.substring(0, colon).strip();
        Map<Key, Quantity> inputs = inputs(label, option.substring(colon + 1).strip());
        for (Parameter needed : NEEDED) {
            if (!inputs.containsKey(needed.key())) {
                throw new Refusal(Words.MEASUREMENT_NEEDED.with(label, word(needed)));
            }
        }
        try {
            return new Size(Documents.sizeId(label, takenIds), label, inputs, Map.of());
        } catch (IllegalArgumentException refused) {
            throw new Refusal(refused.getMessage());
        }
    }

    private static Map<Key, Quantity> inputs(String label, String text) throws Refusal {
        Map<Key, Quantity> inputs = new LinkedHashMap<>();
        Matcher matcher = MEASUREMENT.matcher(text);
        int end = 0;
        while (end < text.length()) {
            if (!matcher.find(end) || matcher.start() != end) {
                throw new Refusal(Words.NOT_A_SIZE.with(label + ": " + text));
            }
            Parameter parameter = parameter(label, matcher.group(1));
            if (inputs.put(parameter.key(), quantity(label, parameter, matcher.group(2))) != null) {
                throw new Refusal(Words.MEASUREMENT_TWICE.with(label, matcher.group(1)));
            }
            end = matcher.end();
        }
        return inputs;
    }

    private static Parameter parameter(String label, String word) throws Refusal {
        List<Parameter> parameters = parameters();
        List<String> words = parameters.stream().map(SizeOption::word).toList();
        return parameters.get(Choice.position(Words.SIZE_OPTION.with(label), word, words));
    }

    private static Quantity quantity(String label, Parameter parameter, String text) throws Refusal {
        try {
            Quantity quantity = Quantity.parse(text);
            parameter.require(Role.INPUT, quantity);
            return quantity;
        } catch (IllegalArgumentException refused) {
            throw new Refusal(Words.MEASUREMENT_REFUSED.with(label, word(parameter), refused.getMessage()));
        }
    }

    /** What can be given for a size. */
    static List<Parameter> parameters() {
        return Catalogue.all().stream().filter(parameter -> parameter.role() == Role.INPUT
                && (parameter.part() == Part.BODY || parameter.part() == Part.FIT)).toList();
    }

    /** {@code foot-length} for {@code body.footLength}. */
    static String word(Parameter parameter) {
        return SizeTableReader.word(parameter);
    }
}
