/**
 * In: pattern files of a workspace. Out: editors, views and problem markers. Nothing is graded here; the engine does
 * that.
 */
package turnheel.workbench;
