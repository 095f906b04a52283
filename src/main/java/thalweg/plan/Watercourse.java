package thalweg.plan;

/**
 * The longest watercourse of a catchment.
 *
 * @param metres along it [m], above 0
 * @param fall over it [m], above 0
 */
public record Watercourse(double metres, double fall) {
    public Watercourse {
        if (!(metres > 0 && fall > 0)) {
            throw new IllegalArgumentException("a watercourse has a length and falls");
        }
    }
}
