/**
 * Development tools that never ship. In: a model's .ecore and .genmodel. Out: its generated source folder. Nothing of
 * the project is compiled against this.
 */
package turnheel.releng;
