package turnheel.cli;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.OwnRow;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Size;
import turnheel.engine.design.Spelling;

/** A number of a pattern as a command names it: {@code foot.stitches[M]}, or {@code foot.stitches} for all sizes. */
record CellName(String key, Optional<String> size) {

    private static final Pattern SHAPE = Pattern.compile("([^\\[\\]]*)(?:\\[(.*)])?", Pattern.DOTALL);

    /** Reads the text; empty when it has another shape. */
    static Optional<CellName> parse(String text) {
        Matcher matcher = SHAPE.matcher(text);
        return matcher.matches() ? Optional.of(new CellName(matcher.group(1).strip(),
                Optional.ofNullable(matcher.group(2)).map(String::strip))) : Optional.empty();
    }

    /** The parameter that the key stands for, in the catalogue or among a pattern's own rows. */
    Parameter parameter(List<OwnRow> ownRows) throws Refusal {
        List<Parameter> parameters = Stream.concat(Catalogue.all().stream(), ownRows.stream().map(OwnRow::parameter))
                .toList();
        List<String> keys = parameters.stream().map(parameter -> parameter.key().name()).toList();
        if (!keys.contains(key)) {
            throw new Refusal(UsageErrors.didYouMean(Words.KEY_UNKNOWN.with(key), Spelling.suggestion(key, keys)));
        }
        return parameters.get(keys.indexOf(key));
    }

    /** Refuses a size that the design does not have. */
    static String knownSize(Design design, String label, String file) throws Refusal {
        List<String> labels = design.sizes().stream().map(Size::label).toList();
        if (!labels.contains(label)) {
            throw new Refusal(UsageErrors.didYouMean(Words.NO_SUCH_SIZE.with(file, label, String.join(", ", labels)),
                    Spelling.suggestion(label, labels)));
        }
        return label;
    }
}
