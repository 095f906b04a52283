/** Checks of what sheets say, and the constructed canyons they say it of. They do not know a database. */
@NullMarked
package thalweg.sheet;

import org.jspecify.annotations.NullMarked;
