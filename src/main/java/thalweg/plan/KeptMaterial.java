package thalweg.plan;

import java.util.List;
import thalweg.rig.RigMaterial;

/**
 * What a kept analysis of a station says that its rig takes.
 *
 * @param points names of the points of the rig
 * @param material to cut and to clip
 * @param old whether parts of the station have changed since it was made
 */
public record KeptMaterial(List<String> points, RigMaterial material, boolean old) {
    public KeptMaterial {
        points = List.copyOf(points);
    }
}
