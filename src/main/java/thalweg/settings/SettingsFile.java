package thalweg.settings;

import java.util.List;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.Finding;
import thalweg.json.Findings;
import thalweg.json.JsonDocument;
import thalweg.text.Language;
import thalweg.text.Phrases;

/** Reads the file of settings: one JSON object, of which every key may be missing. */
public final class SettingsFile {

    private static final String KEEPER = "keeper";

    /** As long as the name under an entry may be. */
    private static final int LONGEST_NAME = 120;

    private SettingsFile() {}

    /**
     * What the file sets, and the standard for what it leaves out.
     *
     * @param name of the file, for messages
     * @throws InputException when it cannot be used, with every reason; then nothing of it holds
     */
    public static Settings read(String name, byte[] bytes, Phrases phrases) {
        Findings findings = new Findings();
        FieldReader in = JsonDocument.read(name, bytes).reader(findings);
        Settings standard = Settings.standard(phrases);
        Settings loads = LoadsKey.read(in, phrases).map(standard::withLoads).orElse(standard);
        Settings settings = loads.withDerating(DeratingSetting.read(in))
                .withDue(DueSetting.read(in))
                .withTrip(TripFigures.read(in, "trip"))
                .withKeeper(in.optionalText(KEEPER, LONGEST_NAME))
                .withTheme(in.word("theme", Theme.class))
                .withLanguage(in.word("language", Language.class));
        in.refuseUnasked();
        if (!findings.none()) {
            throw refusal(name, findings.all());
        }
        return settings;
    }

    private static InputException refusal(String name, List<Finding> findings) {
        return new InputException(Sentence.reasons(
                Sentence.of("The settings in {0} cannot be used:", name),
                findings.stream().map(Finding::saying).toList()));
    }
}
