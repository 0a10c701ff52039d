package turnheel.engine.design;

/**
 * The rows of one yarn of several. A pattern of one yarn has only the rows for the whole sock.
 *
 * @param plainLoops yarn in one sock, by how many plain knit loops would take as much
 * @param sockMetres of one sock, without margin
 * @param metres of the pair, with the margin
 * @param sockGrams of one sock, without margin
 * @param grams of the pair, with the margin
 * @param balls of the pair, whole ones
 */
public record YarnRows(Parameter plainLoops, Parameter sockMetres, Parameter metres, Parameter sockGrams,
        Parameter grams, Parameter balls) {
}
