/** Tests of GeoJSON that comes in. */
@NullMarked
package thalweg.exchange.geojson;

import org.jspecify.annotations.NullMarked;
