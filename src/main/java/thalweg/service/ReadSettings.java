package thalweg.service;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.settings.Settings;
import thalweg.settings.SettingsFile;
import thalweg.text.Language;
import thalweg.text.Phrases;

/** Finds and reads what a person has set. */
public final class ReadSettings {

    private ReadSettings() {}

    /**
     * What the named file sets, or the user's own; where they have none, the standard.
     *
     * @param named another file than the user's own, which then must be there
     * @throws InputException when the file cannot be used, with what would do
     */
    public static Settings of(Optional<Path> named, Folders folders, Phrases phrases) {
        if (named.map(Path::toString).filter(String::isBlank).isPresent()) {
            throw new InputException(Sentence.of("--settings needs the name of a file after it."));
        }
        Path file = named.orElse(folders.settings());
        if (named.isEmpty() && !Files.exists(file)) {
            return Settings.standard(phrases);
        }
        return SettingsFile.read(file.toString(), ReadFile.bytes(file), phrases);
    }

    /**
     * The language in which the program is to speak: as stated, else as the settings say, else as the environment asks.
     * The settings are not looked at where it is stated.
     *
     * @param stated on the command line
     * @param named another file than the user's own, which then must be there
     * @param asked by the environment
     * @throws InputException when the file cannot be used, with what would do
     */
    public static Language language(Optional<Language> stated, Optional<Path> named, Folders folders, Language asked) {
        return stated.or(() -> of(named, folders, LoadPhrases.english()).language())
                .orElse(asked);
    }
}
