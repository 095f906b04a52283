/** Lists as CSV for a spreadsheet. Knows no database and no screen. */
@NullMarked
package thalweg.exchange.csv;

import org.jspecify.annotations.NullMarked;
