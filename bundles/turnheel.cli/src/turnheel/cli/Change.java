package turnheel.cli;

import java.util.Optional;

/**
 * What an assignment did.
 *
 * @param name a key, or the word of a pattern option
 * @param size empty for what belongs to the whole pattern
 * @param was the text before; empty when a rule or default held
 * @param now the text after; empty when a rule or default holds
 */
record Change(String name, Optional<String> size, String was, String now) {

    boolean isChange() {
        return !was.equals(now);
    }
}
