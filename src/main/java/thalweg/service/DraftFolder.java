package thalweg.service;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import thalweg.draft.Draft;
import thalweg.draft.DraftKey;
import thalweg.draft.KeptDraft;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.fault.StoreException;
import thalweg.json.JsonText;

/**
 * The folder in which drafts on one database wait: one small file a form, which only its owner may read. Used by one
 * thread.
 */
public final class DraftFolder {

    private static final String ENDING = ".json";

    /** More digits than it takes to tell databases apart. */
    private static final int DIGITS = 16;

    private static final Set<StandardOpenOption> ANEW = Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);

    private final Path drafts;
    private final Path folder;
    private final String database;
    private final Clock clock;
    private final Consumer<String> log;

    private DraftFolder(Path drafts, String database, Clock clock, Consumer<String> log) {
        this.drafts = drafts;
        this.folder = drafts.resolve(hash(database));
        this.database = database;
        this.clock = clock;
        this.log = log;
    }

    /**
     * The drafts on that database; nothing is made before there is one.
     *
     * @param drafts folder of all drafts on all databases
     * @param database as a file
     * @param log is given a line for each file that cannot be read
     */
    public static DraftFolder of(Path drafts, Path database, Clock clock, Consumer<String> log) {
        return new DraftFolder(drafts, real(database).toString(), clock, log);
    }

    /** However a database is named, its drafts are the same. */
    private static Path real(Path database) {
        try {
            return database.toRealPath();
        } catch (IOException notThereYet) {
            return database.toAbsolutePath().normalize();
        }
    }

    private static String hash(String name) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(name.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest).substring(0, DIGITS);
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java has SHA-256", e);
        }
    }

    /**
     * Keeps a draft in the place of what was kept of the same form.
     *
     * @throws StoreException when it cannot be written; what was kept before stays
     */
    public void keep(Draft draft) {
        Folders.make(drafts);
        Folders.make(folder);
        String text = JsonText.indented(DraftFile.write(draft, database, clock.instant()));
        Path aside = folder.resolve(draft.key().text() + ".part");
        try {
            Files.deleteIfExists(aside);
            try (FileChannel channel = FileChannel.open(aside, ANEW, ownerOnly())) {
                ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
                while (bytes.hasRemaining()) {
                    channel.write(bytes);
                }
                channel.force(false);
            }
            Files.move(aside, file(draft.key()), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new StoreException(
                    Sentence.of(
                            "What is typed cannot be kept as a draft in {0}; check the room on the disk and whether"
                                    + " the folder may be written.",
                            folder),
                    e);
        }
    }

    private FileAttribute<?>[] ownerOnly() {
        return folder.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
                }
                : new FileAttribute<?>[0];
    }

    /**
     * Drops what was kept of a form.
     *
     * @throws StoreException when the file cannot be taken away
     */
    public void drop(DraftKey key) {
        try {
            Files.deleteIfExists(file(key));
        } catch (IOException e) {
            throw new StoreException(
                    Sentence.of("The draft {0} cannot be taken away; delete it by hand.", file(key)), e);
        }
    }

    /** What was kept of a form; empty where nothing was. What cannot be read stays where it is and counts as nothing. */
    public Optional<KeptDraft> find(DraftKey key) {
        return Files.exists(file(key)) ? read(file(key)) : Optional.empty();
    }

    /** All drafts, newest first. */
    public List<KeptDraft> all() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().endsWith(ENDING))
                    .sorted()
                    .flatMap(file -> read(file).stream())
                    .sorted(Comparator.comparing(KeptDraft::at).reversed())
                    .toList();
        } catch (IOException e) {
            log.accept("The folder of drafts " + folder + " cannot be read: " + e.getMessage());
            return List.of();
        }
    }

    private Optional<KeptDraft> read(Path file) {
        try {
            DraftFile.Content content = DraftFile.read(file.toString(), Files.readAllBytes(file));
            Instant now = clock.instant();
            long age = Math.max(0, Duration.between(content.at(), now).toSeconds());
            return Optional.of(new KeptDraft(content.draft(), content.at(), age));
        } catch (IOException | InputException e) {
            log.accept("The draft " + file + " cannot be read and is passed over: " + e.getMessage());
            return Optional.empty();
        }
    }

    private Path file(DraftKey key) {
        return folder.resolve(key.text() + ENDING);
    }
}
