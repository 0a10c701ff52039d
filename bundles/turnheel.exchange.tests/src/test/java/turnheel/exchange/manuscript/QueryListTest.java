package turnheel.exchange.manuscript;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import turnheel.engine.query.Check;
import turnheel.engine.query.Place;
import turnheel.engine.query.Query;
import turnheel.exchange.manuscript.QueryList.Entry;
import turnheel.exchange.manuscript.QueryList.State;

class QueryListTest {

    private static final String FIRST = "Rnd 1: K to end. 62 sts.\nRnd 2: P to end. 61 sts.";

    private static Query count(int line, String expected, String found) {
        return new Query(Check.TEXT_COUNT, new Place.Text(line, 18, 24), List.of("M"), expected, found, expected);
    }

    private static QueryList first() {
        return QueryList.EMPTY.next(FIRST, List.of(count(1, "64", "62"), count(2, "64", "61")));
    }

    private static QueryList answered() throws QueryList.NoQueryListException {
        return QueryList.read(first().text().replace(",64,,", ",64,stet,yes"));
    }

    private static List<String> states(QueryList list) {
        return list.entries().stream()
                .map(entry -> entry.number() + " " + entry.state().word() + " " + entry.line()).toList();
    }

    @Test
    void numbersTheQueriesOfTheFirstVersion() {
        assertEquals(List.of("1 new 1", "2 new 2"), states(first()));
        Entry entry = first().entries().getFirst();
        assertEquals("Rnd 1: K to end. 62 sts.", entry.text());
        assertEquals("text.count-differs", entry.check());
        assertEquals("64", entry.correction());
    }

    @Test
    void carriesNumberAndAnswerOnToUnchangedLinesWhereverTheyStand() throws QueryList.NoQueryListException {
        List<Query> queries = List.of(count(2, "64", "62"), count(3, "64", "61"));
        QueryList next = answered().next("A line before.\n" + FIRST, queries);
        assertEquals(List.of("1 open 2", "2 open 3"), states(next));
        assertTrue(next.entries().stream()
                .allMatch(entry -> entry.answer().equals("stet") && entry.done().equals("yes")));
    }

    @Test
    void asksAnewOfAChangedLineAndKeepsTheOldEntryAsGone() throws QueryList.NoQueryListException {
        QueryList next = answered().next(FIRST.replace("62 sts", "60 sts"), List.of(count(1, "64", "60"),
                count(2, "64", "61")));
        assertEquals(List.of("1 gone 1", "2 open 2", "3 new 1"), states(next));
        assertEquals("", next.entries().getLast().answer());
        assertEquals("stet", next.entries().getFirst().answer());
    }

    @Test
    void isReadBackAsItWasWritten() throws QueryList.NoQueryListException {
        QueryList list = QueryList.EMPTY.next("=1+1; \"K2\", 62 sts.", List.of(count(1, "64", "62")));
        assertTrue(list.text().contains("'=1+1"), list.text());
        assertEquals(list, QueryList.read(list.text()));
        assertEquals(State.NEW, list.entries().getFirst().state());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "size,foot\nM,24",
            "number,state,line,text,sizes,check,query,correction,answer,done\nx,new,1,,,,,,,"})
    void refusesWhatIsNoListOfQueries(String text) {
        assertThrows(QueryList.NoQueryListException.class, () -> QueryList.read(text));
    }
}
