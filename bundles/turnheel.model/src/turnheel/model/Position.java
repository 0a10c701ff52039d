package turnheel.model;

/** A place in a file: line and column, each from 1; 0 and 0 for what came from no file. */
record Position(int line, int column) {

    static final Position NONE = new Position(0, 0);
}
