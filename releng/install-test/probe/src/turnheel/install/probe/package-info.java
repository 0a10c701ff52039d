/**
 * A stranger in somebody's platform who opens a pattern and photographs its grid. In: a pattern file, named by a system
 * property. Out: a picture, or a text that says why there is none. It knows no bundle of Turnheel, so that what it sees
 * is what the installed feature brought along by itself.
 */
package turnheel.install.probe;
