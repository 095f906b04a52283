package thalweg.service;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.exchange.json.RigAnswerText;
import thalweg.exchange.json.RigFile;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.StationRecord;
import thalweg.rig.Analyze;
import thalweg.rig.BestFocus;
import thalweg.rig.CheckedRig;
import thalweg.rig.CompareLayouts;
import thalweg.rig.FindBestFocus;
import thalweg.rig.FindPeakRange;
import thalweg.rig.KeptRig;
import thalweg.rig.PeakRange;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigComparison;
import thalweg.rig.RigDraft;
import thalweg.rig.RigInput;
import thalweg.rig.RigPriority;
import thalweg.rig.RigStudy;
import thalweg.route.PartialDate;
import thalweg.settings.LoadPreset;
import thalweg.units.Force;
import thalweg.units.Mass;

/** Computes rigs, and keeps them with stations. */
public final class AnalyzeRig {

    /** Larger files are no rigs [bytes]. */
    static final int LARGEST = 100_000;

    private AnalyzeRig() {}

    /**
     * The rig in a file.
     *
     * @throws InputException when there is none, or none that can be computed
     */
    public static RigInput read(Path file) {
        return open(file, in -> read(file.toString(), in));
    }

    /** What is done with an open stream. */
    interface Reading<T> {
        T of(InputStream in) throws IOException;
    }

    /**
     * Does something with the content of a file.
     *
     * @throws InputException when it cannot be read
     */
    static <T> T open(Path file, Reading<T> reading) {
        if (file.toString().isBlank()) {
            throw new InputException(
                    Sentence.of("The name of the rig file is empty; name one, or - for standard input."));
        }
        try (InputStream in = Files.newInputStream(file)) {
            return reading.of(in);
        } catch (NoSuchFileException e) {
            throw new InputException(Sentence.of("There is no file {0}; check the path.", file), e);
        } catch (IOException e) {
            throw new InputException(
                    Sentence.of("The file {0} cannot be read; check that it is a file you may read.", file), e);
        }
    }

    /**
     * The rig in a stream.
     *
     * @param name what the stream is called in messages
     * @throws IOException when it cannot be read
     */
    public static RigInput read(String name, InputStream in) throws IOException {
        byte[] bytes = in.readNBytes(LARGEST + 1);
        if (bytes.length > LARGEST) {
            throw new InputException(Sentence.of("{0} is larger than 100 kB; that is no rig file.", name));
        }
        return RigFile.read(name, bytes);
    }

    /**
     * A rig with shares of its strengths that hold where it states none.
     *
     * @param shares by the words of {@link thalweg.rig.DeratingKey}, each above 0 and at most 1
     */
    public static RigInput derated(RigInput input, Map<String, Double> shares) {
        return shares.isEmpty()
                ? input
                : RigDraft.of(input).deratedBy(shares).check().input().orElse(input);
    }

    /** A rig under another load, in the same direction and on the same rope. */
    public static RigInput loaded(RigInput input, LoadPreset load) {
        RigDraft draft = RigDraft.of(input);
        CheckedRig checked = draft.withLoad(draft.load()
                        .pulling(
                                known(load.mass().map(Mass::kilograms)),
                                known(load.force().map(Force::inKilonewtons)),
                                load.factor() == 1 ? OptionalDouble.empty() : OptionalDouble.of(load.factor())))
                .check();
        return checked.input()
                .orElseThrow(() -> new InputException(Sentence.of(
                        "The rig \"{0}\" cannot bear the load \"{1}\": {2}",
                        input.name(), load.name(), checked.findings().get(0).saying())));
    }

    private static OptionalDouble known(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    /** The rigs of the analyses that are kept in a canyon, by entry; what this version cannot read is missing. */
    public static Map<Uid, KeptRig> kept(CanyonRecord canyon) {
        Map<Uid, KeptRig> rigs = new LinkedHashMap<>();
        canyon.stations().stream()
                .flatMap(station -> station.analyses().stream())
                .forEach(entry -> kept(entry.content()).ifPresent(rig -> rigs.put(entry.uid(), new KeptRig(rig))));
        return rigs;
    }

    /** The rig of an analysis; empty where this version cannot read it. */
    public static Optional<RigInput> kept(RigAnalysis analysis) {
        try {
            return Optional.of(RigFile.read("The analysis", analysis.input()));
        } catch (InputException e) {
            return Optional.empty();
        }
    }

    /** What the model says about a rig. */
    public static RigAnswer answer(RigInput input) {
        return Analyze.of(input);
    }

    /** A study as JSON over several lines. */
    public static String json(RigStudy study) {
        return RigAnswerText.write(study);
    }

    /** Between what the peaks of an answer lie. */
    public static PeakRange peakRange(RigAnswer answer) {
        return FindPeakRange.of(answer);
    }

    /** Where the focus would spare the weakest point most. */
    public static BestFocus bestFocus(RigInput input) {
        return FindBestFocus.of(input);
    }

    /** An answer as JSON on one line. */
    public static String jsonLine(RigAnswer answer) {
        return RigAnswerText.line(answer);
    }

    /**
     * Computes a rig and keeps input and answer with a station, together with what its inventory is like now.
     *
     * @param program version of this program
     * @throws thalweg.fault.StoreException when the database cannot be written
     */
    public static void attach(Session session, StationRecord station, RigInput input, String program) {
        RigAnswer answer = Analyze.of(input);
        new AddEntries(session)
                .analysis(new RigAnalysis(
                        station.station().uid(),
                        PartialDate.of(session.today()),
                        session.keeper(),
                        program,
                        RigFile.write(input),
                        RigAnswerText.line(answer),
                        station.inventory()));
    }

    /** The points of a rig in every layout, side by side. */
    public static RigComparison compare(RigInput input, RigPriority priority) {
        return CompareLayouts.of(input, priority);
    }
}
