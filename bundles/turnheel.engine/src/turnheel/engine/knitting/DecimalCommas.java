package turnheel.engine.knitting;

import java.util.BitSet;

/** Which commas of a line stand within numbers, as in {@code 18,5 (19,5; 20,5)}. */
final class DecimalCommas {

    private DecimalCommas() {
    }

    /**
     * A comma right between two digits is one, except within brackets that have no other sign to separate their values:
     * there it is the one that separates them.
     */
    static BitSet of(String line) {
        BitSet commas = new BitSet();
        BitSet inBracket = new BitSet();
        boolean separated = false;
        boolean open = false;
        for (int at = 0; at < line.length(); at++) {
            char c = line.charAt(at);
            boolean between = c == ',' && at > 0 && at + 1 < line.length() && WrittenNumber.isDigit(line.charAt(at - 1))
                    && WrittenNumber.isDigit(line.charAt(at + 1));
            if (c == '(' || c == '[' || c == '{') {
                open = true;
                separated = false;
                inBracket.clear();
            } else if (c == ')' || c == ']' || c == '}') {
                open = false;
                if (separated) {
                    commas.or(inBracket);
                }
                inBracket.clear();
            } else if (between) {
                (open ? inBracket : commas).set(at);
            } else if (c == ';' || c == '/' || c == '|' || c == ',') {
                separated = true;
            }
        }
        return commas;
    }
}
