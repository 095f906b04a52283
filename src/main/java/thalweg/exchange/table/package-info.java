/**
 * Tables that come in as CSV: read, their columns matched with fields of the records, their rows made into what an import
 * would change. It does not know the database: what is there already it asks {@link thalweg.exchange.table.Here}.
 */
@NullMarked
package thalweg.exchange.table;

import org.jspecify.annotations.NullMarked;
