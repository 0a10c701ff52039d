package turnheel.workbench.document;

import turnheel.engine.term.Key;

/**
 * One number of one size: what is selected in the grid, and what the views around it tell of.
 *
 * @param size label of the size
 */
public record CellPlace(Key key, String size) {
}
