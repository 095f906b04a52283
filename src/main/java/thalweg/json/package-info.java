/**
 * JSON as plain values: read within limits and with places for messages, written in one canonical and one readable
 * form. It does not know what the values mean; nothing else in the program speaks to the JSON library.
 */
@NullMarked
package thalweg.json;

import org.jspecify.annotations.NullMarked;
