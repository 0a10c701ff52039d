/**
 * The shape of a formula: in comes its text, out comes a parse tree. The code is generated from {@code Formula.g4} in
 * the bundle's grammar folder by the build; nobody edits it, and nobody but {@code turnheel.engine.formula} sees it.
 */
@NonNullByDefault({}) // the generator does not say what can be null
package turnheel.engine.formula.grammar;

import org.eclipse.jdt.annotation.NonNullByDefault;
