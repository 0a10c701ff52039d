package turnheel.engine.writing;

import turnheel.engine.wording.Vocabulary;

/** What rounds are called that have no number, in the words of a house style. */
record Names(String increase, String decrease, String closing, String setUp, String pickUp, String opening,
        String turning, String joining, String next) {

    static Names of(Vocabulary vocabulary) {
        return new Names(vocabulary.phrase("name.increase"), vocabulary.phrase("name.decrease"),
                vocabulary.phrase("name.closing"), vocabulary.phrase("name.setUp"), vocabulary.phrase("name.pickUp"),
                vocabulary.phrase("name.opening"), vocabulary.phrase("name.turning"), vocabulary.phrase("name.joining"),
                vocabulary.phrase("name.next"));
    }
}
