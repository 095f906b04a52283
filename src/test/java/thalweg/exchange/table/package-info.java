/** Tests of tables that come in. */
@NullMarked
package thalweg.exchange.table;

import org.jspecify.annotations.NullMarked;
