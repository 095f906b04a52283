package thalweg.rig;

/**
 * How the master sits on a strand along which it slides.
 *
 * @param captured whether a twist keeps it inside the loop when a point fails
 * @param friction between strand and master [-], 0 or more
 */
public record Sliding(boolean captured, double friction) {

    public Sliding {
        if (!(friction >= 0) || !Double.isFinite(friction)) {
            throw new IllegalArgumentException("friction is 0 or more");
        }
    }
}
