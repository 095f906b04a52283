/**
 * What was found and decided at stations over time, and what follows for the condition of each part. It does not know
 * where it is stored, nor how it is shown.
 */
@NullMarked
package thalweg.logbook;

import org.jspecify.annotations.NullMarked;
