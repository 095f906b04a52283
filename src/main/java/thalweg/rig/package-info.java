/**
 * The mechanics of multi-point anchors: a network of strands, its equilibrium, and what that says about a way of
 * rigging. It does not know canyons, stations or inventories, nor how a rig is typed, stored or shown.
 */
@NullMarked
package thalweg.rig;

import org.jspecify.annotations.NullMarked;
