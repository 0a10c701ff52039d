/**
 * The engine as a whole: its rooms and the arrows between them. The tests of a room lie in the package of the same
 * name, so that what is private to the room is in reach; start with {@code fixture} and {@code hands}.
 */
package turnheel.engine;
