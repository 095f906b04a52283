package thalweg.plan;

import java.util.OptionalDouble;
import thalweg.route.PartialDate;

/**
 * What a kept analysis of a station says for the heaviest of the group.
 *
 * @param station its name
 * @param analysis its name
 * @param made when it was made
 * @param leastRatio the least known strength over force at rest [-]; empty where none is known
 * @param unknown whether the strength of some part is unknown
 * @param within whether what is left after any one loss is within the known strength; false also where nothing is left
 * @param old whether the inventory has changed since it was made
 */
public record RigReview(
        String station,
        String analysis,
        PartialDate made,
        OptionalDouble leastRatio,
        boolean unknown,
        boolean within,
        boolean old) {}
