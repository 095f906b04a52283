package thalweg.route;

/** What the hardware of a station stands in, as far as it decides how fast metal corrodes and textile ages. */
public enum Exposure {
    /** Salt spray, or close enough to the sea for it. */
    MARINE,
    /** In the water, or wet by it at most levels. */
    WET,
    /** Out of the water and its spray. */
    DRY
}
