/** What a trip needs: which ropes to carry, how long the ways take, how long it is light, and what to decide before leaving. */
@NullMarked
package thalweg.plan;

import org.jspecify.annotations.NullMarked;
