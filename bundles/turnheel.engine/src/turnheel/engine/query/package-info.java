/**
 * What a person must look at: one type, whoever finds it and wherever it shows. In: findings of grading, checks and (later)
 * knitting. Out: {@link turnheel.engine.query.Query} values; the sentence is made at the edge by
 * {@link turnheel.engine.query.Sentences}.
 */
@NonNullByDefault
package turnheel.engine.query;

import org.eclipse.jdt.annotation.NonNullByDefault;
