package thalweg.draft;

import java.time.Instant;

/**
 * A draft that was kept.
 *
 * @param draft what was typed
 * @param at when it was kept last
 * @param ageSeconds how long ago that was when it was looked up [s], 0 or more
 */
public record KeptDraft(Draft draft, Instant at, long ageSeconds) {}
