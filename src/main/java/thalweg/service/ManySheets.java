package thalweg.service;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import thalweg.fault.AppException;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.fault.StoreException;
import thalweg.ledger.LedgerPlace;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.CanyonRow;
import thalweg.logbook.SheetGiven;
import thalweg.progress.Progress;
import thalweg.text.Slug;

/** Writes the sheets of many canyons into a folder, all of them or none. */
public final class ManySheets {

    private final Session session;
    private final MakeSheet make;

    /**
     * @param session whose canyons they are
     * @param make makes each of them
     */
    public ManySheets(Session session, MakeSheet make) {
        this.session = session;
        this.make = make;
    }

    /** A sheet that waits beside its place. */
    private record Waiting(Path aside, Path target, Optional<SheetGiven> note) {}

    /**
     * Writes the sheets beside their places, then moves them there, so that a stop or a full disk leaves what was there.
     *
     * @param canyons whose sheets; one that was taken out of use meanwhile is passed over
     * @param order which form, for every sheet; of whole canyons
     * @param folder that is there
     * @param overwrite whether files that are there may be replaced
     * @return how many were written, 1 or more
     * @throws InputException when there is no canyon, a file is there already, or the folder cannot be written
     * @throws thalweg.progress.StoppedException when it was stopped; no sheet was written then
     */
    public int write(List<CanyonRow> canyons, SheetOrder order, Path folder, boolean overwrite, Progress progress) {
        if (!Files.isDirectory(folder)) {
            throw new InputException(Sentence.of("There is no folder {0}; make it first or name another.", folder));
        }
        if (!overwrite) {
            refuseThere(canyons, order, folder);
        }
        try {
            Path aside = Files.createTempDirectory(folder, ".thalweg-");
            try {
                List<Waiting> made = made(canyons, order, new Places(aside, folder), progress);
                if (made.isEmpty()) {
                    throw new InputException(Sentence.of("No canyon is found any more; nothing was written."));
                }
                for (Waiting sheet : made) {
                    Files.move(sheet.aside(), sheet.target(), StandardCopyOption.REPLACE_EXISTING);
                }
                note(made, folder);
                return made.size();
            } finally {
                delete(aside);
            }
        } catch (IOException e) {
            throw new InputException(
                    Sentence.of(
                            "{0} cannot be written; check that the folder may be written and the disk has room.",
                            folder),
                    e);
        }
    }

    private record Places(Path aside, Path folder) {}

    private List<Waiting> made(List<CanyonRow> canyons, SheetOrder order, Places places, Progress progress)
            throws IOException {
        FindRecord find = new FindRecord(session);
        LedgerPlace ledger = session.earlier().place();
        long last = session.isReadOnly() ? 0 : session.local().lastSheetNumber();
        Set<String> taken = new HashSet<>();
        List<Waiting> made = new ArrayList<>();
        for (int i = 0; i < canyons.size(); i++) {
            progress.at(i, canyons.size());
            Uid uid = canyons.get(i).uid();
            Optional<CanyonRecord> canyon = find.byId(uid);
            if (canyon.isPresent()) {
                String usual = name(canyons.get(i), order);
                String name = taken.add(usual)
                        ? usual
                        : uid.text() + "." + order.format().ending();
                Path file = places.aside().resolve(name);
                long number = last + made.size() + 1;
                Optional<SheetGiven> note = session.isReadOnly()
                        ? Optional.empty()
                        : Optional.of(GiveSheet.noted(canyon.get(), session.today(), file, "", number, ledger));
                Files.write(
                        file,
                        note.isPresent()
                                ? make.numbered(canyon.get(), order, note.get().mark())
                                : make.of(canyon.get(), order));
                made.add(new Waiting(file, places.folder().resolve(name), note));
            }
        }
        return made;
    }

    /** Under the numbers that they bear; failing, it says which of both happened. */
    private void note(List<Waiting> made, Path folder) {
        List<SheetGiven> notes =
                made.stream().flatMap(sheet -> sheet.note().stream()).toList();
        if (notes.isEmpty()) {
            return;
        }
        try {
            new AddEntries(session).sheetsGiven(notes);
        } catch (AppException e) {
            Sentence saying = Sentence.of(
                    "The sheets were written to {0}, but their numbers were not noted: {1} Write them again.",
                    folder, e.saying());
            throw e instanceof StoreException ? new StoreException(saying, e) : new InputException(saying, e);
        }
    }

    private static void refuseThere(List<CanyonRow> canyons, SheetOrder order, Path folder) {
        List<Path> there = canyons.stream()
                .map(canyon -> folder.resolve(name(canyon, order)))
                .filter(Files::exists)
                .toList();
        if (!there.isEmpty()) {
            throw new InputException(Sentence.of(
                    "{0} of these files are there already, such as {1}; name another folder, or say that they may be"
                            + " replaced.",
                    there.size(), there.get(0)));
        }
    }

    /** As the form for one sheet names it. */
    private static String name(CanyonRow canyon, SheetOrder order) {
        return Slug.of(canyon.name(), canyon.uid().tail()) + "."
                + order.format().ending();
    }

    private static void delete(Path folder) throws IOException {
        List<Path> left;
        try (var files = Files.list(folder)) {
            left = files.toList();
        }
        for (Path file : left) {
            Files.deleteIfExists(file);
        }
        Files.deleteIfExists(folder);
    }
}
