package turnheel.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Gauge;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Role;
import turnheel.engine.design.Spelling;
import turnheel.model.Documents;
import turnheel.model.pattern.EntryElement;
import turnheel.model.pattern.Pattern;
import turnheel.model.pattern.SizeElement;

/**
 * One change of a document: {@code foot.stitches[M]=64}, {@code body.footLength=240mm} in all sizes,
 * {@code title=Harbour}, {@code own.half=foot.stitches/2}, or nothing after the equals sign, which gives the number
 * back to its rule or default.
 */
record Assignment(String text, CellName name, String value) {

    private static final java.util.regex.Pattern SHAPE = java.util.regex.Pattern.compile(
            "([^=\\[]*(?:\\[.*?])?)=(.*)", java.util.regex.Pattern.DOTALL);

    static Assignment parse(String text) throws Refusal {
        Matcher matcher = SHAPE.matcher(text);
        if (matcher.matches()) {
            Optional<CellName> name = CellName.parse(matcher.group(1));
            if (name.isPresent()) {
                return new Assignment(text, name.get(), matcher.group(2).strip());
            }
        }
        throw new Refusal(Words.NOT_AN_ASSIGNMENT.with(text));
    }

    /** Makes the change and says what it was; a change of all sizes gives one for each. */
    List<Change> applyTo(Pattern document, ResultOrigins origins) throws Refusal {
        if (OwnRowText.isMeant(name.key())) {
            return List.of(changeOwnRow(document));
        }
        Optional<PatternOption> option = PatternOption.of(name.key());
        if (option.isPresent()) {
            return List.of(changePattern(document, option.get()));
        }
        if (!name.key().contains(".")) {
            throw new Refusal(UsageErrors.didYouMean(
                    Words.NAME_UNKNOWN.with(name.key(), String.join(" ", PatternOption.words())),
                    Spelling.suggestion(name.key(), PatternOption.words())));
        }
        Parameter parameter = name.parameter(List.of());
        if (parameter.role() == Role.RESULT) {
            throw new Refusal(origins.refusal(parameter.key()));
        }
        if (name.size().isEmpty() && (parameter == Catalogue.GAUGE_STITCHES || parameter == Catalogue.GAUGE_ROUNDS)) {
            return List.of(changeGauge(document, parameter));
        }
        if (name.size().isEmpty() && parameter == Catalogue.NEEDLE) {
            return List.of(changePattern(document, PatternOption.NEEDLE));
        }
        List<Change> changes = new ArrayList<>();
        for (SizeElement size : sizes(document)) {
            changes.add(changeSize(size, parameter));
        }
        return changes;
    }

    private Change changeOwnRow(Pattern document) throws Refusal {
        if (name.size().isPresent()) {
            throw new Refusal(Words.NOT_OF_A_SIZE.with(name.key()));
        }
        return OwnRowText.parse(text).applyTo(document);
    }

    private Change changePattern(Pattern document, PatternOption option) throws Refusal {
        if (name.size().isPresent()) {
            throw new Refusal(Words.NOT_OF_A_SIZE.with(option.word()));
        }
        if (value.isEmpty() && !option.mayBeEmpty()) {
            throw new Refusal(Words.VALUE_MISSING.with(option.word()));
        }
        String was = option.read(document);
        option.write(document, option.word(), value);
        return new Change(option.word(), Optional.empty(), was, option.read(document));
    }

    /** A gauge that no size is named for is the pattern's own. */
    private Change changeGauge(Pattern document, Parameter parameter) throws Refusal {
        Gauge gauge = (Gauge) quantity(parameter)
                .orElseThrow(() -> new Refusal(Words.VALUE_MISSING.with(parameter.key())));
        boolean ofStitches = parameter == Catalogue.GAUGE_STITCHES;
        Gauge was = ofStitches ? document.getStitchGauge() : document.getRoundGauge();
        if (ofStitches) {
            document.setStitchGauge(gauge);
        } else {
            document.setRoundGauge(gauge);
        }
        return new Change(parameter.key().name(), Optional.empty(), was.toString(), gauge.toString());
    }

    private List<SizeElement> sizes(Pattern document) throws Refusal {
        if (name.size().isEmpty()) {
            return document.getSizes();
        }
        String label = name.size().get();
        List<String> labels = document.getSizes().stream().map(SizeElement::getLabel).toList();
        if (!labels.contains(label)) {
            throw new Refusal(UsageErrors.unknownChoice(Words.SIZE_OF.with(text), label, labels));
        }
        return List.of(document.getSizes().get(labels.indexOf(label)));
    }

    private Change changeSize(SizeElement size, Parameter parameter) throws Refusal {
        Quantity quantity = quantity(parameter).orElse(null);
        boolean isInput = parameter.role() == Role.INPUT;
        String was = text(isInput ? size.getInputs() : size.getOverrides(), parameter);
        if (isInput) {
            Documents.setInput(size, parameter.key(), quantity);
        } else {
            Documents.setOverride(size, parameter.key(), quantity);
        }
        return new Change(parameter.key().name(), Optional.of(size.getLabel()), was,
                quantity == null ? "" : quantity.toString());
    }

    private Optional<Quantity> quantity(Parameter parameter) throws Refusal {
        if (value.isEmpty()) {
            return Optional.empty();
        }
        try {
            Quantity quantity = Quantity.parse(value);
            parameter.require(parameter.role(), quantity);
            return Optional.of(quantity);
        } catch (IllegalArgumentException refused) {
            throw new Refusal(Words.VALUE_REFUSED.with(text, refused.getMessage()));
        }
    }

    private static String text(List<? extends EntryElement> entries, Parameter parameter) {
        return entries.stream().filter(entry -> parameter.key().equals(entry.getKey())).findFirst()
                .map(entry -> entry.getValue().toString()).orElse("");
    }
}
