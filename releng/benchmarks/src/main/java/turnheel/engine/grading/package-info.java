/** Benchmarks that must look inside the room that they time. */
@NonNullByDefault
package turnheel.engine.grading;

import org.eclipse.jdt.annotation.NonNullByDefault;
