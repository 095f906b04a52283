/** Checks of the profile, and the lines it is drawn of. They do not know a database or a screen. */
@NullMarked
package thalweg.profile;

import org.jspecify.annotations.NullMarked;
