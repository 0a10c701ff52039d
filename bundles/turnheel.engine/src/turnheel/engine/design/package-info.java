/**
 * What a designer decides: gauge, sizes, parts, overrides, each as it was written, never converted or rounded. In: the
 * document of the model bundle, through its door. Out: one immutable {@link turnheel.engine.design.Design}. The
 * {@link turnheel.engine.design.Catalogue} lists every number that a pattern can hold; nothing here computes one.
 */
@NonNullByDefault
package turnheel.engine.design;

import org.eclipse.jdt.annotation.NonNullByDefault;
