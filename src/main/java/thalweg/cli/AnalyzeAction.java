package thalweg.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.logbook.RigStanding;
import thalweg.rig.Analyze;
import thalweg.rig.RigInput;
import thalweg.rig.RigPriority;
import thalweg.rig.RigStudy;
import thalweg.service.AnalyzeLines;
import thalweg.service.AnalyzeRig;
import thalweg.service.FindRecord;
import thalweg.service.LoadPhrases;
import thalweg.service.Session;
import thalweg.settings.LoadPreset;
import thalweg.settings.Settings;
import thalweg.sheet.PointRemarks;
import thalweg.text.Shown;
import thalweg.text.Width;

/** Computes rigs from files. */
@Command(
        name = "analyze",
        description = {
            "Computes the rig that each FILE states, and prints what the model says about it.",
            "With --station and --attach it is kept with the station and stands on its sheet."
        })
final class AnalyzeAction extends Action {

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "rig files; - is standard input")
    private List<Path> files = new ArrayList<>();

    @Option(names = "--json", description = "print the answer as a JSON object")
    private boolean json;

    @Option(
            names = "--jsonl",
            description = "each line of the files is a rig; answer it at once, on one line of JSON (exit code 1: lines"
                    + " were refused)")
    private boolean jsonl;

    @Option(names = "--station", paramLabel = "STATION", description = "CANYON/STATION, part of it, or an id")
    private @Nullable String station;

    @Option(names = "--attach", description = "keep the analysis with that station")
    private boolean attach;

    @Option(names = "--compare", description = "set every layout on the same points side by side")
    private boolean compare;

    @Option(
            names = "--matters",
            paramLabel = "WHAT",
            description = "what matters most, with --compare: equal-shares or little-extension")
    private @Nullable String matters;

    @Option(
            names = "--why",
            description = "behind the report, say of every figure how it comes about, what it rests on, where that is"
                    + " from and what it is not")
    private boolean why;

    @Option(
            names = "--load",
            paramLabel = "NAME",
            description = "another load than the files state: one of those that the settings name, or part of its name;"
                    + " its direction and its rope stay as they are stated")
    private @Nullable String load;

    @Mixin
    private CascadeOptions cascade = new CascadeOptions();

    @Mixin
    private SettingsOption settings = new SettingsOption();

    private Settings set = new Settings(List.of());
    private Optional<LoadPreset> otherLoad = Optional.empty();
    private boolean headed;

    AnalyzeAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    Optional<Path> settingsFile() {
        return settings.file();
    }

    @Override
    public Integer call() {
        if (attach != (station != null)) {
            throw new InputException(
                    Sentence.of("--station and --attach go together: one says where, the other that it is kept."));
        }
        cascade.check();
        priority();
        set = settings.read(surrounds(), phrases());
        otherLoad = Optional.ofNullable(load).map(this::loadOf);
        if (why && (json || jsonl)) {
            throw new InputException(
                    Sentence.of("--why is for reading and does not go with --json or --jsonl; leave one of them out."));
        }
        if (jsonl) {
            return lines();
        }
        if (json && files.size() > 1) {
            throw new InputException(
                    Sentence.of("--json prints one object, for one file; put the rigs on a line each for --jsonl."));
        }
        if (station != null) {
            List<RigInput> inputs = keep(station, files.stream().map(this::read).toList());
            for (int i = 0; i < files.size(); i++) {
                head(files.get(i));
                show(inputs.get(i));
            }
            return ExitCodes.DONE;
        }
        return files.size() > 1 ? each() : one(files.get(0));
    }

    /** By its name in the language of the person, or in English, so that scripts say the same everywhere. */
    private LoadPreset loadOf(String name) {
        if (set.fitting(name).size() == 1) {
            return set.load(name);
        }
        Settings english = settings.read(surrounds(), LoadPhrases.english());
        List<LoadPreset> fit = english.fitting(name);
        return fit.size() == 1 ? set.loads().get(english.loads().indexOf(fit.get(0))) : set.load(name);
    }

    private int one(Path file) {
        show(read(file));
        return ExitCodes.DONE;
    }

    /** One that is wrong does not keep the others from being answered. */
    private int each() {
        int code = ExitCodes.DONE;
        for (Path file : files) {
            head(file);
            try {
                show(read(file));
            } catch (InputException e) {
                print(phrases().say("rig.not_computed"));
                surrounds().out().flush();
                tell(e.saying());
                code = ExitCodes.WRONG_INPUT;
            }
        }
        return code;
    }

    /** Above each of several reports stands the file that it is about. */
    private void head(Path file) {
        if (files.size() < 2) {
            return;
        }
        String name = Shown.safe(nameOf(file));
        String gap = headed ? "\n\n" : "";
        headed = true;
        print(gap + name + "\n" + "=".repeat(Width.of(name)) + "\n");
    }

    private void show(RigInput input) {
        RigStudy study =
                RigStudy.of(Analyze.of(input)).withPeakRange().withBestFocus().with(cascade.odds(input, this::tell));
        if (compare) {
            study = study.comparing(priority());
        }
        print(json ? AnalyzeRig.json(study) : new RigReport(phrases(), shared().units(), set).of(study));
        if (why) {
            print("\n" + new WhyReport(phrases(), shared().units(), set).of(study));
        }
        surrounds().out().flush();
    }

    private int lines() {
        if (json || attach || cascade.asked() || compare) {
            throw new InputException(Sentence.of(
                    "--jsonl does not go with --json, --attach, --cascade or --compare; leave one of them out."));
        }
        AnalyzeLines work = new AnalyzeLines(this::send, this::adjusted);
        int code = ExitCodes.DONE;
        for (Path file : files) {
            try {
                answerLines(work, file);
            } catch (InputException e) {
                tell(e.saying());
                code = ExitCodes.WRONG_INPUT;
            }
        }
        if (work.refused() == 0) {
            return code;
        }
        if (work.heard()) {
            tell(Sentence.of(
                    "Lines refused: {0} of {1}; with --jsonl every line is a whole rig by itself.",
                    work.refused(), work.lines()));
        }
        return Math.max(code, ExitCodes.NO);
    }

    private void answerLines(AnalyzeLines work, Path file) {
        if (!isStandardInput(file)) {
            work.answer(file);
            return;
        }
        try {
            work.answer(nameOf(file), surrounds().in());
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    /** Whoever reads the answers gets each at once; whoever closes the pipe has seen enough. */
    private boolean send(String line) {
        print(line);
        return !surrounds().out().checkError();
    }

    private RigPriority priority() {
        String asked = matters;
        if (asked == null) {
            return RigPriority.UNSTATED;
        }
        if (!compare) {
            throw new InputException(Sentence.of("--matters belongs to --compare; add it, or leave it out."));
        }
        return Arrays.stream(RigPriority.values())
                .filter(one -> one != RigPriority.UNSTATED && one.word().equals(asked))
                .findFirst()
                .orElseThrow(() -> new InputException(
                        Sentence.of("--matters is \"{0}\"; it must be equal-shares or little-extension.", asked)));
    }

    private RigInput read(Path file) {
        return adjusted(asStated(file));
    }

    private RigInput adjusted(RigInput stated) {
        RigInput derated = AnalyzeRig.derated(stated, set.derating());
        return otherLoad.map(other -> AnalyzeRig.loaded(derated, other)).orElse(derated);
    }

    private RigInput asStated(Path file) {
        if (!isStandardInput(file)) {
            return AnalyzeRig.read(file);
        }
        try {
            return AnalyzeRig.read(nameOf(file), surrounds().in());
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    private static InputException unreadable(IOException failure) {
        return new InputException(Sentence.of("Standard input cannot be read; name a file instead."), failure);
    }

    private static boolean isStandardInput(Path file) {
        return file.toString().equals("-");
    }

    private static String nameOf(Path file) {
        return isStandardInput(file) ? "standard input" : file.toString();
    }

    /** The rigs as they were kept: with how their points were found, where the files do not state it. */
    private List<RigInput> keep(String name, List<RigInput> read) {
        try (Session session = shared().writing()) {
            FindRecord.StationInCanyon place = new FindRecord(session).station(name);
            List<RigInput> inputs = read.stream()
                    .map(input -> RigStanding.told(input, place.station()))
                    .toList();
            for (RigInput input : inputs) {
                AnalyzeRig.attach(session, place.station(), input, surrounds().version());
                PointRemarks.of(input, place.station(), phrases(), shared().units())
                        .forEach(remark -> tell(
                                remark.grave()
                                        ? Sentence.of("Beware: {0}.", remark.text())
                                        : Sentence.of("Note: {0}.", remark.text())));
            }
            tell(Sentence.of(
                    "Attached to {0}/{1}.",
                    place.canyon().canyon().name(), place.station().station().name()));
            return inputs;
        }
    }
}
