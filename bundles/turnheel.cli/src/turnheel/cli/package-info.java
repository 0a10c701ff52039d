/**
 * The command line. In: arguments and pattern files. Out: tables, JSON and files, and an exit code. No display, no
 * workbench, no OSGi; nothing is computed here: a verb reads, calls the engine, and shows or writes what it returned.
 * One class a verb; start reading at {@link turnheel.cli.Main}, then {@link turnheel.cli.GradeVerb}.
 */
package turnheel.cli;
