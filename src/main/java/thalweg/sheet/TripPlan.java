package thalweg.sheet;

import thalweg.logbook.Trip;
import thalweg.plan.Plan;

/**
 * The trip for which a sheet is made.
 *
 * @param trip as it is entered
 * @param plan what was worked out for it
 */
public record TripPlan(Trip trip, Plan plan) {}
