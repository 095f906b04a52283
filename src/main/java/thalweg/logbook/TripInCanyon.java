package thalweg.logbook;

/**
 * A trip, where its canyon is not plain from the context.
 *
 * @param canyon where it goes
 */
public record TripInCanyon(Trip trip, CanyonName canyon) {}
