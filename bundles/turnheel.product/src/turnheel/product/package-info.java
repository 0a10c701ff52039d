/**
 * The stand-alone application: its name and pictures, how its window is laid out, and the example that a first start
 * opens. In: the workbench bundle. Out: a product of the platform's own application. Nothing here is part of what is
 * installed into somebody's own IDE.
 */
package turnheel.product;
