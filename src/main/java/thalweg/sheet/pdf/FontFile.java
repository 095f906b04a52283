package thalweg.sheet.pdf;

/**
 * A TrueType font as it lies in a file.
 *
 * @param name by which a person finds the file, not blank
 * @param bytes all of it; nobody writes into them
 */
public record FontFile(String name, byte[] bytes) {

    public FontFile {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a file has a name");
        }
    }
}
