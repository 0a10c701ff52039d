package turnheel.cli;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import turnheel.engine.design.Parameter;
import turnheel.engine.design.Role;
import turnheel.engine.grading.RuleBook;
import turnheel.engine.term.Key;
import turnheel.engine.term.Term;

/** What to set in place of a number that follows from others. */
record ResultOrigins(RuleBook rules, String file) {

    /** Why a result cannot be set, with the rules and inputs that it follows from. */
    String refusal(Key result) {
        return rules.contains(result)
                ? Words.KEY_IS_RESULT.with(result, String.join(", ", of(result).stream().map(Key::name).toList()))
                : absence(result);
    }

    /** That no part of the pattern has such a row, with those that there are. */
    String absence(Key key) {
        List<String> ofPart = rules.parameters().stream().filter(other -> other.role() != Role.RESULT)
                .map(Parameter::key).filter(other -> other.part().equals(key.part())).map(Key::name).toList();
        return Words.KEY_ABSENT.with(file, key, String.join(", ", ofPart));
    }

    /** The nearest keys that can be set, through results that follow from other results, in the order of the rules. */
    private Set<Key> of(Key result) {
        Set<Key> settable = new LinkedHashSet<>();
        for (Key key : rules.rule(result).map(Term::keys).orElse(Set.of())) {
            if (rules.parameter(key).role() == Role.RESULT) {
                settable.addAll(of(key));
            } else {
                settable.add(key);
            }
        }
        return settable;
    }
}
