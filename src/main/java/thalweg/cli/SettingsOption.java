package thalweg.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import thalweg.service.ReadSettings;
import thalweg.settings.Settings;
import thalweg.text.Phrases;

/** Where the settings are that a command goes by. */
final class SettingsOption {

    @Option(
            names = "--settings",
            paramLabel = "FILE",
            description = "the settings, instead of your own; see src/docs/settings.md")
    private @Nullable Path file;

    /**
     * What they set, or the standard.
     *
     * @throws thalweg.fault.InputException when the file cannot be used
     */
    Settings read(Surrounds surrounds, Phrases phrases) {
        return ReadSettings.of(file(), surrounds.folders(), phrases);
    }

    /** The file, where one is named. */
    Optional<Path> file() {
        return Optional.ofNullable(file);
    }
}
