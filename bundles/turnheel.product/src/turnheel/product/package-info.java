/** In: the workbench. Out: the stand-alone application: branding, perspective, first start. No editor lives here. */
package turnheel.product;
