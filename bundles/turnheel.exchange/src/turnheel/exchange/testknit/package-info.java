/**
 * Test knitting. In: a graded pattern, and later a table of what knitters found. Out: a sheet with predictions and
 * blanks, the same as a table to be filled in by a program or a person, and the results against the predictions. What
 * cannot be read is a {@link turnheel.exchange.testknit.ResultProblem} with its row and column, never an exception;
 * nothing is predicted here that the engine has not graded. Start reading at {@link turnheel.exchange.testknit.Item}.
 */
package turnheel.exchange.testknit;
