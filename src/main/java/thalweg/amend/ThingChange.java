package thalweg.amend;

import thalweg.body.ThingBody;

/**
 * A thing before and after a change.
 *
 * @param before the state from which the change was made
 * @param after the same thing, changed
 */
public record ThingChange(ThingBody before, ThingBody after) {}
