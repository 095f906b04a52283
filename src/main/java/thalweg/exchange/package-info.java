/**
 * What an import would change, worked out as values before anything is written. It does not know the formats of files,
 * nor the database.
 */
@NullMarked
package thalweg.exchange;

import org.jspecify.annotations.NullMarked;
