package turnheel.engine.knitting;

import turnheel.engine.query.Check;

/**
 * What one size found in a line.
 *
 * @param line by its place among the lines, from 0
 * @param atStated whether it concerns the count that the line states, not what it tells to do
 */
record Finding(int line, Check check, boolean atStated, String expected, String found, String correction) {
}
