package turnheel.cli;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;

import turnheel.engine.design.OwnRow;
import turnheel.engine.design.Part;
import turnheel.engine.design.Spelling;
import turnheel.engine.term.Key;
import turnheel.model.Documents;
import turnheel.model.pattern.OwnRowElement;
import turnheel.model.pattern.Pattern;

/**
 * Own rows as they are written on the command line: {@code own.cuffShare: Cuff of leg = cuff.rounds/leg.rounds}, with
 * or without the label. What stands after the first equals sign is the formula, as it is.
 */
record OwnRowText(String key, Optional<String> label, String formula) {

    private static final java.util.regex.Pattern SHAPE = java.util.regex.Pattern.compile(
            "\\s*(?<key>[^:=\\[\\s]+)\\s*(?::(?<label>[^=]*))?=(?<formula>.*)", java.util.regex.Pattern.DOTALL);
    private static final String START = Part.OWN.prefix() + ".";

    /** Whether a change that is written like this is one of an own row. */
    static boolean isMeant(String text) {
        return text.strip().startsWith(START);
    }

    static OwnRowText parse(String text) throws Refusal {
        Matcher matcher = SHAPE.matcher(text);
        if (!matcher.matches() || !matcher.group("key").startsWith(START) || !Key.isKey(matcher.group("key"))) {
            throw new Refusal(Words.NOT_AN_OWN_ROW.with(text));
        }
        return new OwnRowText(matcher.group("key"), Optional.ofNullable(matcher.group("label")).map(String::strip),
                matcher.group("formula").strip());
    }

    /** Adds the row, changes the one that is there, or drops it where the formula is empty. */
    Change applyTo(Pattern document) throws Refusal {
        List<OwnRowElement> rows = document.getOwnRows();
        Optional<OwnRowElement> present = rows.stream().filter(row -> key.equals(row.getKey().name())).findFirst();
        String was = present.map(OwnRowText::written).orElse("");
        if (formula.isEmpty()) {
            rows.remove(present.orElseThrow(() -> unknown(rows)));
        } else {
            OwnRow row = row(label.or(() -> present.map(OwnRowElement::getLabel)).orElse(""), rows);
            OwnRowElement element = Documents.ownRow(row);
            present.ifPresentOrElse(before -> rows.set(rows.indexOf(before), element), () -> rows.add(element));
            return new Change(key, Optional.empty(), was, written(element));
        }
        return new Change(key, Optional.empty(), was, "");
    }

    private Refusal unknown(List<OwnRowElement> rows) {
        List<String> keys = rows.stream().map(row -> row.getKey().name()).toList();
        return new Refusal(UsageErrors.didYouMean(Words.OWN_ROW_ABSENT.with(key), Spelling.suggestion(key, keys)));
    }

    private OwnRow row(String text, List<OwnRowElement> others) throws Refusal {
        try {
            OwnRow row = new OwnRow(new Key(key), text, formula);
            for (OwnRowElement other : others) {
                if (!other.getKey().equals(row.key()) && row.sharesNameWith(other.getKey())) {
                    throw new Refusal(Words.OWN_ROW_TWICE.with(key, other.getKey()));
                }
            }
            return row;
        } catch (IllegalArgumentException refused) {
            throw new Refusal(Words.VALUE_REFUSED.with(key, refused.getMessage()));
        }
    }

    /** The row after its key, as it can be written again. */
    private static String written(OwnRowElement row) {
        return row.getLabel() == null || row.getLabel().isEmpty() ? row.getFormula()
                : row.getLabel() + " = " + row.getFormula();
    }
}
