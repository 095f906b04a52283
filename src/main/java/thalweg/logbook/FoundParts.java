package thalweg.logbook;

import java.util.List;

/**
 * What a search among parts found.
 *
 * @param rows by canyon, along the line
 * @param more whether there are more than were asked for; then these are no complete list
 */
public record FoundParts(List<PartRow> rows, boolean more) {

    public FoundParts {
        rows = List.copyOf(rows);
    }
}
