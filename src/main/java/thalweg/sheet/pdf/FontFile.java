package thalweg.sheet.pdf;

/** A TrueType font as it lies in a file. */
public final class FontFile {

    private final String name;
    private final byte[] bytes;

    /**
     * @param name by which a person finds the file, not blank
     * @param bytes all of it
     */
    public FontFile(String name, byte[] bytes) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a file has a name");
        }
        this.name = name;
        this.bytes = bytes.clone();
    }

    String name() {
        return name;
    }

    byte[] bytes() {
        return bytes.clone();
    }
}
