/**
 * A canyon's line drawn as it goes down, to scale, and told in words where a picture cannot be. It does not know on which
 * screen or sheet the picture ends.
 */
@NullMarked
package thalweg.profile;

import org.jspecify.annotations.NullMarked;
