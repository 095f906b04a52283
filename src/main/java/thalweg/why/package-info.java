/**
 * Says of every figure that the calculator shows how it comes about, what it rests on, where its method is from, and what
 * it is not. It computes nothing of its own but what is needed to put a rig's numbers into a formula.
 */
@NullMarked
package thalweg.why;

import org.jspecify.annotations.NullMarked;
