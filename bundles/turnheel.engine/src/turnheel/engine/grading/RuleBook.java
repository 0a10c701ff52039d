package turnheel.engine.grading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import turnheel.engine.design.Catalogue;
import turnheel.engine.design.Design;
import turnheel.engine.design.Parameter;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.Role;
import turnheel.engine.term.Key;
import turnheel.engine.term.Term;

/**
 * The rules of one design: which rows it has, and how each is made where nobody says otherwise. The rules do not depend on
 * a size; sizes differ by their values.
 */
public final class RuleBook {

    private final Map<Key, Entry> entries = new LinkedHashMap<>();
    private final List<Parameter> own = new ArrayList<>();

    private record Entry(Optional<Term> rule, Optional<Quantity> given, Source source) {
    }

    private RuleBook() {
    }

    static RuleBook of(Design design) {
        RuleBook book = new RuleBook();
        FitRules.contribute(book, design);
        ToeRules.contribute(book, design);
        FootRules.contribute(book, design);
        HeelRules.contribute(book, design);
        LegRules.contribute(book, design);
        CuffRules.contribute(book, design);
        LengthRules.contribute(book, design);
        PatternRowRules.contribute(book, design);
        return book;
    }

    /** These rules and those of the yarn, which can be told once the loops are counted. */
    RuleBook withYarn(Design design) {
        RuleBook book = new RuleBook();
        book.entries.putAll(entries);
        YarnRules.contribute(book, design);
        return book;
    }

    /** A measurement that has no default. */
    void input(Parameter parameter) {
        put(parameter, new Entry(Optional.empty(), Optional.empty(), Source.INPUT));
    }

    /** An input that the pattern holds for every size; a size may have its own. */
    void input(Parameter parameter, Quantity ofPattern) {
        put(parameter, new Entry(Optional.empty(), Optional.of(ofPattern), Source.INPUT));
    }

    /** A measurement or decision with the value that it has when it is left empty. */
    void input(Parameter parameter, Term whenEmpty) {
        put(parameter, new Entry(Optional.of(whenEmpty), Optional.empty(), Source.DEFAULT));
    }

    /** A measurement that is estimated from others when it is left empty. */
    void predicted(Parameter parameter, Term whenEmpty) {
        put(parameter, new Entry(Optional.of(whenEmpty), Optional.empty(), Source.PREDICTED));
    }

    /** The one rule of a number. */
    void rule(Parameter parameter, Term rule) {
        put(parameter, new Entry(Optional.of(rule), Optional.empty(), Source.RULE));
    }

    /** A number that no rule can say: the count solver picks it, or it is counted from the rounds. */
    void chosen(Parameter parameter) {
        put(parameter, new Entry(Optional.empty(), Optional.empty(), Source.CHOSEN));
    }

    /** A row of the designer; without a rule where its formula cannot be worked out. */
    void own(Parameter parameter, Optional<Term> rule) {
        put(parameter, new Entry(rule, Optional.empty(), Source.OWN));
        own.add(parameter);
    }

    private void put(Parameter parameter, Entry entry) {
        boolean isInput = switch (entry.source()) {
            case INPUT, DEFAULT, PREDICTED -> true;
            case RULE, CHOSEN, OVERRIDE, OWN -> false;
        };
        if (isInput != (parameter.role() == Role.INPUT)) {
            throw new IllegalStateException("%s has the role %s".formatted(parameter.key(), parameter.role()));
        }
        if (entries.put(parameter.key(), entry) != null) {
            throw new IllegalStateException("%s has two rules".formatted(parameter.key()));
        }
    }

    /**
     * The rows of this design, in the order of the catalogue, then the designer's own; what no part contributes is
     * absent.
     */
    public List<Parameter> parameters() {
        return Stream.concat(Catalogue.all().stream().filter(parameter -> contains(parameter.key())), own.stream())
                .toList();
    }

    /**
     * The parameter of a key, be it of the catalogue or the designer's own.
     *
     * @throws IllegalArgumentException when there is none
     */
    public Parameter parameter(Key key) {
        return own.stream().filter(parameter -> parameter.key().equals(key)).findFirst()
                .orElseGet(() -> Catalogue.parameter(key));
    }

    public boolean contains(Key key) {
        return entries.containsKey(key);
    }

    /** The rule or default of a key; empty for a plain measurement, for the solver's choice and for an absent row. */
    public Optional<Term> rule(Key key) {
        return Optional.ofNullable(entries.get(key)).flatMap(Entry::rule);
    }

    /** What the pattern gives every size that has none of its own; empty for all but gauge and needle. */
    public Optional<Quantity> ofPattern(Key key) {
        return Optional.ofNullable(entries.get(key)).flatMap(Entry::given);
    }

    /** Where the value of a key comes from when the size says nothing. */
    Source source(Key key) {
        Entry entry = entries.get(key);
        if (entry == null) {
            throw new IllegalArgumentException("%s is not in this design".formatted(key));
        }
        return entry.source();
    }
}
