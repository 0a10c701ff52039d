package turnheel.engine.knitting;

/**
 * What lies on the needle after a round, a row or a line that is neither.
 *
 * @param line the line that told to work it, by its place in {@link Manuscript#lines}, from 0
 * @param rounds how many rounds or rows one after the other ended so; 0 when it was less than one
 * @param stitches all loops that are not on hold, yarn-overs too
 * @param openYarnOvers the yarn-overs among them
 * @param onHold loops on hold
 */
public record Traced(int line, int rounds, int stitches, int openYarnOvers, int onHold) {
}
