/**
 * Generated from {@code model/pattern.ecore}; only the factory and the package of {@link turnheel.model.pattern} look
 * in here.
 */
package turnheel.model.pattern.impl;
