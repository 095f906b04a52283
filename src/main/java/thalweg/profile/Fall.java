package thalweg.profile;

import java.util.Optional;
import thalweg.route.Obstacle;
import thalweg.route.ObstacleKind;
import thalweg.units.Length;

/** How the line goes down at a place. */
enum Fall {
    /** Not at all, as far as is recorded. */
    LEVEL,
    /** All at the place itself. */
    UPRIGHT,
    /** From the place to the next one: on a walk or a swim. */
    SLOPING,
    /** By a height that nobody entered. */
    UNKNOWN;

    /** What a place's kind and height say. The height of a way out is climbed beside the line, not descended on it. */
    static Fall of(Obstacle obstacle) {
        Optional<Length> height = obstacle.height().filter(length -> length.metres() > 0);
        ObstacleKind kind = obstacle.kind();
        return switch (kind) {
            case DROP, DOWNCLIMB, HANDLINE, JUMP, SLIDE ->
                height.isPresent() ? UPRIGHT : obstacle.height().isPresent() ? LEVEL : UNKNOWN;
            case WALK, SWIM -> height.isPresent() ? SLOPING : LEVEL;
            case HAZARD, OTHER -> height.isPresent() ? UPRIGHT : LEVEL;
            case ESCAPE -> LEVEL;
        };
    }

    /** Whether a height is asked for at such a place: a walk or a hazard without one lacks nothing. */
    static boolean asksForHeight(Obstacle obstacle) {
        return of(obstacle) != LEVEL || obstacle.kind().goesDown();
    }
}
