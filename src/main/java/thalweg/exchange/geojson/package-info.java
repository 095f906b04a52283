/** Points and lines that come in as GeoJSON, as the waypoints that a person places. Knows no database and no screen. */
@NullMarked
package thalweg.exchange.geojson;

import org.jspecify.annotations.NullMarked;
