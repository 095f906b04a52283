package thalweg.service;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.fault.StoreException;
import thalweg.ledger.Uid;
import thalweg.progress.Progress;
import thalweg.storage.Access;
import thalweg.storage.BackupFile;
import thalweg.storage.CanyonStore;
import thalweg.storage.ChangeStore;
import thalweg.storage.CheckStore;
import thalweg.storage.Database;
import thalweg.storage.DueOrderStore;
import thalweg.storage.DueStore;
import thalweg.storage.EarlierStore;
import thalweg.storage.LedgerStore;
import thalweg.storage.LocalStore;
import thalweg.storage.NativeLibrary;
import thalweg.storage.PartStore;
import thalweg.storage.RecordStore;
import thalweg.storage.SettingStore;
import thalweg.storage.StationStore;
import thalweg.storage.ThingStore;

/** An open database with its keeper, a clock and a source of new ids. */
public final class Session implements AutoCloseable {

    private static final String KEEPER = "keeper";

    private final Database database;
    private final Clock clock;
    private final String user;
    private final Answers answers;
    private volatile Optional<String> named = Optional.empty();

    private Session(Database database, Clock clock, String user) {
        this(database, clock, user, new Answers());
    }

    private Session(Database database, Clock clock, String user, Answers answers) {
        this.answers = answers;
        this.database = database;
        this.clock = clock;
        this.user = user.isBlank() ? "unnamed keeper" : user;
    }

    /**
     * Opens a database for the screen or a command that changes it, and makes it where it is missing.
     *
     * @param user name of the account, which signs changes until the keeper gives a name
     * @throws thalweg.fault.StoreException when it cannot be used
     */
    public static Session creating(Path file, Clock clock, String user) {
        return new Session(Database.open(file, Access.CREATE), clock, user);
    }

    /**
     * Opens a database that is there.
     *
     * @throws thalweg.fault.StoreException when it cannot be used
     */
    public static Session writing(Path file, Clock clock, String user) {
        return new Session(Database.open(file, Access.WRITE), clock, user);
    }

    /**
     * Opens a database that is there, without changing anything in it.
     *
     * @throws thalweg.fault.StoreException when it cannot be used
     */
    public static Session reading(Path file, Clock clock, String user) {
        return new Session(Database.open(file, Access.READ), clock, user);
    }

    /** A database in memory, which is gone when it is closed. */
    public static Session inMemory(Clock clock, String user) {
        return over(Database.inMemory(), clock, user);
    }

    /** A session over a database that is open already; it is closed with the session. */
    static Session over(Database database, Clock clock, String user) {
        return new Session(database, clock, user);
    }

    /** Makes the first opening fast: the database's native library is kept in that cache folder. */
    public static void prepare(Path cache) {
        try {
            Folders.make(cache);
            NativeLibrary.keepIn(cache);
        } catch (StoreException e) {
            // A cache that cannot be made costs time only.
            System.clearProperty("org.sqlite.lib.path");
        }
    }

    /** A session on another file that is there, only to read it. */
    Session beside(Path file) {
        return reading(file, clock, user);
    }

    /**
     * Does long work beside everything else: on a connection of its own, so that whoever reads or writes here does not
     * wait for it.
     */
    public <T> T aside(Function<Session, T> work) {
        if (!Files.exists(file())) {
            return work.apply(this);
        }
        Access access = isReadOnly() ? Access.READ : Access.WRITE;
        try (Session other = new Session(Database.open(file(), access), clock, user, answers)) {
            return work.apply(other.named(named));
        }
    }

    void backUp(Path target, Progress progress) {
        database.backUp(target, progress);
    }

    void replaceBy(BackupFile copy) {
        copy.into(database);
    }

    /** What the model says about rigs that are kept. */
    Answers answers() {
        return answers;
    }

    LedgerStore ledger() {
        return new LedgerStore(database);
    }

    RecordStore records() {
        return new RecordStore(database);
    }

    EarlierStore earlier() {
        return new EarlierStore(database);
    }

    CanyonStore canyons() {
        return new CanyonStore(database);
    }

    LocalStore local() {
        return new LocalStore(database);
    }

    ThingStore things() {
        return new ThingStore(database);
    }

    ChangeStore changes() {
        return new ChangeStore(database);
    }

    DueStore due() {
        return new DueStore(database);
    }

    DueOrderStore dueInOrder() {
        return new DueOrderStore(database);
    }

    PartStore parts() {
        return new PartStore(database);
    }

    StationStore stations() {
        return new StationStore(database);
    }

    CheckStore check() {
        return new CheckStore(database);
    }

    /** Has it told, from the thread that works, when work waits for another program that writes. */
    public void onWaiting(Runnable waiting) {
        database.onWaiting(waiting);
    }

    /** A number that is another one once somebody else has changed the database. */
    public long changedElsewhere() {
        return database.changedElsewhere();
    }

    /** Whether nothing can be changed. */
    public boolean isReadOnly() {
        return database.isReadOnly();
    }

    /** Where the database is. */
    public Path file() {
        return database.file();
    }

    /** Today, where the user is. */
    public LocalDate today() {
        return LocalDate.now(clock);
    }

    /** The minute of the day, 0 to 1439, in the zone in which today is today. */
    int minuteOfDay() {
        LocalTime time = LocalTime.now(clock);
        return time.getHour() * 60 + time.getMinute();
    }

    Instant instant() {
        return clock.instant();
    }

    /** Now, as RFC 3339 in UTC to the second. */
    public String now() {
        return Instant.now(clock).truncatedTo(ChronoUnit.SECONDS).toString();
    }

    /** An id for a new thing. */
    public Uid mint() {
        return Uid.minted(clock.millis(), UUID.randomUUID());
    }

    /**
     * This session, in which everything is signed by that name whatever the database says.
     *
     * @param keeper as the person's own settings have it; empty where they do not
     */
    public Session named(Optional<String> keeper) {
        named = keeper;
        return this;
    }

    /** Who signs changes: the name of the settings, or the one that was set in this database, or that of the account. */
    public String keeper() {
        return setKeeper().orElse(user);
    }

    /** The name that was set, in the settings or in this database; empty where the name of the account stands in. */
    public Optional<String> setKeeper() {
        return named.or(() -> new SettingStore(database).value(KEEPER));
    }

    /**
     * Sets the name by which everything in this database is signed from now on.
     *
     * @throws InputException when the settings name another
     */
    public void setKeeper(String name) {
        if (named.isPresent()) {
            throw new InputException(Sentence.of(
                    "Your settings file names you \"{0}\" for every database; change its key keeper instead.",
                    named.get()));
        }
        new SettingStore(database).set(KEEPER, name);
    }

    @Override
    public void close() {
        database.close();
    }
}
