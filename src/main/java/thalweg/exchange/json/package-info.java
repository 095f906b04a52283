/**
 * The JSON files of the program: records to pass on, and rigs. It does not know the database.
 */
@NullMarked
package thalweg.exchange.json;

import org.jspecify.annotations.NullMarked;
