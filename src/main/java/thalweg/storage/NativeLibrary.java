package thalweg.storage;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.sqlite.SQLiteJDBCLoader;
import org.sqlite.util.OSInfo;

/** Keeps SQLite's native library in a folder of ours: unpacked once, not at every start into the temporary folder. */
public final class NativeLibrary {

    private NativeLibrary() {}

    /**
     * Sees to it that the library is in that folder and is loaded from there. Where that cannot be, the driver unpacks
     * it by itself, which is slower and needs a temporary folder that may hold programs.
     *
     * @param folder that only its owner may write
     */
    public static void keepIn(Path folder) {
        String name = System.mapLibraryName("sqlitejdbc");
        String resource = "/org/sqlite/native/" + OSInfo.getNativeLibFolderPathForCurrentOS() + "/" + name;
        Path home = folder.resolve("sqlite-" + SQLiteJDBCLoader.getVersion());
        try {
            if (!Files.exists(home.resolve(name))) {
                unpack(resource, home, name);
            }
            System.setProperty("org.sqlite.lib.path", home.toString());
            System.setProperty("org.sqlite.lib.name", name);
        } catch (IOException e) {
            System.clearProperty("org.sqlite.lib.path");
        }
    }

    private static void unpack(String resource, Path home, String name) throws IOException {
        try (InputStream in = NativeLibrary.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IOException("the driver has no library for this machine");
            }
            Files.createDirectories(home);
            Path aside = Files.createTempFile(home, name, ".part");
            try {
                Files.copy(in, aside, StandardCopyOption.REPLACE_EXISTING);
                Files.move(aside, home.resolve(name), StandardCopyOption.ATOMIC_MOVE);
            } finally {
                Files.deleteIfExists(aside);
            }
        }
    }
}
