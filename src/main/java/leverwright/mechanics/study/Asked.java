package leverwright.mechanics.study;

import leverwright.mechanics.exercise.Reading;

/**
 * A quantity read off one of a spread's performances.
 *
 * @param of which performance, from 0
 * @param reading what is read off it
 */
record Asked(int of, Reading<?> reading) {}
