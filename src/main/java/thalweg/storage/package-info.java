/**
 * The database: one SQLite file, its migrations, the ledger in it and the tables derived from that. It is the only home
 * of SQL, and does not know who asks.
 */
@NullMarked
package thalweg.storage;

import org.jspecify.annotations.NullMarked;
