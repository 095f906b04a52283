package thalweg.cli;

import java.util.Optional;
import picocli.CommandLine.Option;
import thalweg.sheet.SheetContents;

/** What a sheet holds, as options: each thing is shown unless somebody leaves it out. */
final class ContentsOptions {

    @Option(
            names = "--no-history",
            description = "leave out the inspections one by one; how parts were last left stays")
    private boolean noHistory;

    @Option(names = "--no-analyses", description = "leave out the rig analyses")
    private boolean noAnalyses;

    @Option(names = "--no-places", description = "leave out all coordinates, in texts those that are recognised")
    private boolean noPlaces;

    @Option(
            names = "--no-names",
            description = "leave out the names of people, in texts those by which records are signed")
    private boolean noNames;

    /** All that others may see but what is left out. */
    SheetContents chosen() {
        return new SheetContents(Optional.empty(), !noHistory, !noAnalyses, !noPlaces, !noNames, false);
    }
}
