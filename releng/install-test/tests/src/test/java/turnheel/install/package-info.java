/**
 * The feature in somebody else's platform. In: a plain platform into which the build's director installed the feature
 * from the update site. Out: the assertion that a pattern opens there and its grid is painted, with no start level set.
 */
package turnheel.install;
