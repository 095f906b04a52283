package thalweg.logbook;

/**
 * Which canyons are found, before anything of them is read.
 *
 * @param order in the order of their names; those that may fit are among them where they were asked for
 * @param unknown how many canyons may fit, whether they are among the found or not
 */
public record CanyonKeys(RowOrder order, int unknown) {}
