package thalweg.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.fault.InputException;
import thalweg.rig.Analyze;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigInput;
import thalweg.service.AnalyzeRig;
import thalweg.service.FindRecord;
import thalweg.service.Session;

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

    @Option(names = "--jsonl", description = "print the answers as JSON, one line a file")
    private boolean jsonl;

    @Option(names = "--station", paramLabel = "STATION", description = "CANYON/STATION, part of it, or an id")
    private @Nullable String station;

    @Option(names = "--attach", description = "keep the analysis with that station")
    private boolean attach;

    AnalyzeAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        if (attach != (station != null)) {
            throw new InputException("--station and --attach go together: one says where, the other that it is kept.");
        }
        if (json && files.size() > 1) {
            throw new InputException("--json prints one object; use --jsonl for several files.");
        }
        List<RigInput> inputs = files.stream().map(this::read).toList();
        List<RigAnswer> answers = inputs.stream().map(Analyze::of).toList();
        if (station != null) {
            keep(station, inputs);
        }
        RigReport report = new RigReport(surrounds().phrases(), shared().units());
        for (RigAnswer answer : answers) {
            print(jsonl ? AnalyzeRig.jsonLine(answer) : json ? AnalyzeRig.json(answer) : report.of(answer));
        }
        return ExitCodes.DONE;
    }

    private RigInput read(Path file) {
        if (!file.toString().equals("-")) {
            return AnalyzeRig.read(file);
        }
        try {
            return AnalyzeRig.read("standard input", surrounds().in());
        } catch (IOException e) {
            throw new InputException("Standard input cannot be read; name a file instead.", e);
        }
    }

    private void keep(String name, List<RigInput> inputs) {
        try (Session session = shared().writing()) {
            FindRecord.StationInCanyon place = new FindRecord(session).station(name);
            for (RigInput input : inputs) {
                AnalyzeRig.attach(session, place.station(), input, surrounds().version());
            }
            tell("Attached to " + place.canyon().canyon().name() + "/"
                    + place.station().station().name() + ".");
        }
    }
}
