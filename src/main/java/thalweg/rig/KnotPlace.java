package thalweg.rig;

/**
 * Where a limiter knot hangs.
 *
 * @param point whose leg it ends
 * @param at its place [m]
 * @param againstMaster whether the master rests against it
 */
public record KnotPlace(String point, Vector3 at, boolean againstMaster) {}
