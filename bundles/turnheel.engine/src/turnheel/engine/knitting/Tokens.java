package turnheel.engine.knitting;

import java.util.ArrayList;
import java.util.List;

import turnheel.engine.knitting.Phrases.Found;
import turnheel.engine.knitting.ReadingWords.Meaning;
import turnheel.engine.knitting.grammar.Instructions;
import turnheel.engine.stitch.Stitch;

/** Words to tokens of the grammar, by the longest phrase of the vocabulary table. Linear. */
final class Tokens {

    private final ReadingWords table;
    private final Names names;
    private final List<ReadToken> tokens = new ArrayList<>();

    private Tokens(ReadingWords table, Names names) {
        this.table = table;
        this.names = names;
    }

    static List<ReadToken> of(List<Word> words, ReadingWords table, Names names) {
        Tokens tokens = new Tokens(table, names);
        for (int at = 0; at < words.size();) {
            at = tokens.token(words, at);
        }
        return tokens.tokens;
    }

    private int token(List<Word> words, int at) {
        Word word = words.get(at);
        Found<String> name = names.rounds().longest(words, at);
        Found<String> pattern = names.patterns().longest(words, at);
        Found<Meaning> phrase = table.phrases().longest(words, at);
        if (pattern != null) {
            return add(Instructions.STITCH_PATTERN, words, at, pattern.words(), Stitch.KNIT, pattern.meaning());
        }
        if (name != null && (phrase == null || name.words() >= phrase.words())) {
            return add(Instructions.NAME, words, at, name.words(), Stitch.KNIT, name.meaning());
        }
        if (phrase != null) {
            if (isRib(words, at, phrase)) {
                return add(Instructions.PATTERN, words, at, ribEnd(words, at) - at, Stitch.KNIT, "");
            }
            if (phrase.meaning().token() == Instructions.WHERE) {
                return where(words, at, phrase.words());
            }
            return add(phrase.meaning().token(), words, at, phrase.words(), phrase.meaning().stitch(), "");
        }
        return switch (word.kind()) {
            case NUMBER -> at + number(words, at);
            case SIGN -> sign(words, at);
            case LETTERS -> letters(words, at);
        };
    }

    private int add(int type, List<Word> words, int at, int count, Stitch stitch, String name) {
        tokens.add(new ReadToken(type, words.get(at), words.get(at + count - 1), stitch, name));
        return at + count;
    }

    private int add(int type, List<Word> words, int at) {
        return add(type, words, at, 1, Stitch.KNIT, "");
    }

    /** A number, and the letters of an ordinal after it. */
    private int number(List<Word> words, int at) {
        add(Instructions.NUMBER, words, at);
        boolean ordinal = at + 1 < words.size() && words.get(at + 1).glued() && table.list("ordinal")
                .contains(words.get(at + 1).text());
        return ordinal ? 2 : 1;
    }

    private int sign(List<Word> words, int at) {
        return switch (words.get(at).text()) {
            case "(" -> add(Instructions.OPEN, words, at);
            case ")" -> add(Instructions.CLOSE, words, at);
            case "," -> add(Instructions.COMMA, words, at);
            case ";", "." -> add(Instructions.SEMICOLON, words, at);
            case ":" -> add(Instructions.COLON, words, at);
            case "/", "|" -> add(Instructions.SLASH, words, at);
            case "=" -> add(Instructions.EQUALS, words, at);
            case "-" -> add(Instructions.DASH, words, at);
            case "*" -> add(Instructions.STAR, words, at);
            case "+" -> add(Instructions.AND, words, at);
            default -> add(Instructions.WORD, words, at);
        };
    }

    private int letters(List<Word> words, int at) {
        String text = words.get(at).text();
        boolean afterNumber = !tokens.isEmpty() && switch (tokens.getLast().getType()) {
            case Instructions.NUMBER, Instructions.CLOSE, Instructions.DASH -> true;
            default -> false;
        };
        if (afterNumber && table.list("unit").contains(text) && !isPreposition(words, at)) {
            return add(Instructions.UNIT, words, at);
        }
        if (table.list("preposition").contains(text)) {
            return at + 1;
        }
        if (text.equals("and")) {
            return add(Instructions.AND, words, at);
        }
        if (text.equals("or")) {
            return add(Instructions.OR, words, at);
        }
        if (table.list("where").contains(text)) {
            return where(words, at, 1);
        }
        return add(Instructions.WORD, words, at);
    }

    private boolean isPreposition(List<Word> words, int at) {
        return table.list("preposition").contains(words.get(at).text()) && at + 1 < words.size()
                && words.get(at + 1).kind() == Word.Kind.LETTERS
                && !table.list("after-unit").contains(words.get(at + 1).text());
    }

    /** A place is told in any words that are no instruction, up to the next sign. */
    private int where(List<Word> words, int at, int least) {
        int end = at + least;
        while (end < words.size() && words.get(end).kind() == Word.Kind.LETTERS
                && !table.list("not-where").contains(words.get(end).text())) {
            end++;
        }
        return add(Instructions.WHERE, words, at, end - at, Stitch.KNIT, "");
    }

    /** Whether this is the name of a rib, as in {@code k2, p2 rib}. */
    private boolean isRib(List<Word> words, int at, Found<Meaning> phrase) {
        return phrase.meaning().token() == Instructions.KNIT && ribEnd(words, at) > at;
    }

    private int ribEnd(List<Word> words, int at) {
        int next = at + 2;
        if (next < words.size() && (words.get(next).is(",") || words.get(next).is("/"))) {
            next++;
        }
        boolean shape = next + 2 < words.size() && words.get(at + 1).kind() == Word.Kind.NUMBER
                && words.get(next).is("purl") && words.get(next + 1).kind() == Word.Kind.NUMBER
                && table.list("rib").contains(words.get(next + 2).text());
        return shape ? next + 3 : at;
    }
}
