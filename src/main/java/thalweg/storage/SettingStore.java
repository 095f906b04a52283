package thalweg.storage;

import java.util.Optional;

/** Settings that stay with this database and are never shared. */
public final class SettingStore {

    private static final String KEEP = """
            insert into setting (name, value)
            values (?, ?)
                on conflict (name) do update
               set value = excluded.value
            """;

    private final Database database;

    /**
     * @param database whose settings they are
     */
    public SettingStore(Database database) {
        this.database = database;
    }

    /** The value of a setting, if it was ever set. */
    public Optional<String> value(String name) {
        return database.read(sql -> sql.one("select value from setting where name = ?", row -> row.getString(1), name));
    }

    /** Sets it. */
    public void set(String name, String value) {
        database.write(sql -> sql.run(KEEP, name, value));
    }
}
