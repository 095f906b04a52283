/** Tests of CSV. They know no database. */
@NullMarked
package thalweg.exchange.csv;

import org.jspecify.annotations.NullMarked;
