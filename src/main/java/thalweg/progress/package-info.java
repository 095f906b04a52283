/**
 * How far long work has come, and whether it is to go on. It does not know who does the work, nor who watches it.
 */
@NullMarked
package thalweg.progress;

import org.jspecify.annotations.NullMarked;
