/**
 * Problem markers of pattern files. In: a file of the workspace and the snapshot of what it holds. Out: markers,
 * written by a job that never holds up the screen. Which queries there are is the engine's business. Start reading at
 * {@link turnheel.workbench.markers.QueryMarkers}.
 */
package turnheel.workbench.markers;
