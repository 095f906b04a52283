package thalweg.service;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Hash;
import thalweg.logbook.Photo;

/**
 * Reads photos only to learn their hashes: the pictures stay where they are, and what is kept is name, hash and caption.
 */
public final class ReadPhotos {

    private ReadPhotos() {}

    /**
     * The photos that were named, each as FILE or FILE=CAPTION.
     *
     * @throws InputException when one of them cannot be read
     */
    public static List<Photo> of(List<String> named) {
        return named.stream().map(ReadPhotos::photo).toList();
    }

    /** A file name may have the sign in it that parts it from the caption: the longest name that is a file is meant. */
    private static Photo photo(String named) {
        String text = named.strip();
        int[] signs = IntStream.range(0, text.length())
                .filter(at -> text.charAt(at) == '=')
                .toArray();
        if (signs.length == 0 || isFile(text)) {
            return read(text, "");
        }
        for (int i = signs.length - 1; i > 0; i--) {
            if (isFile(text.substring(0, signs[i]))) {
                return read(text.substring(0, signs[i]), text.substring(signs[i] + 1));
            }
        }
        return read(text.substring(0, signs[0]), text.substring(signs[0] + 1));
    }

    private static Optional<Path> path(String name) {
        try {
            return Optional.of(Path.of(name.strip()));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private static boolean isFile(String name) {
        return path(name).filter(Files::isRegularFile).isPresent();
    }

    private static Photo read(String name, String caption) {
        if (name.isBlank()) {
            throw new InputException(Sentence.of("The name of the photo is empty; name a file, or a file=caption."));
        }
        Path file = path(name)
                .orElseThrow(() ->
                        new InputException(Sentence.of("\"{0}\" is no name of a file; name another.", name.strip())));
        if (Files.isDirectory(file)) {
            throw new InputException(Sentence.of("The photo {0} is a folder; name a file in it.", file));
        }
        return new Photo(file.getFileName().toString(), hash(file), caption.strip());
    }

    private static Hash hash(Path file) {
        MessageDigest digest = sha256();
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            in.transferTo(OutputStream.nullOutputStream());
        } catch (NoSuchFileException e) {
            throw new InputException(Sentence.of("There is no photo {0}; check the path.", file), e);
        } catch (IOException e) {
            throw new InputException(Sentence.of("The photo {0} cannot be read; check its permissions.", file), e);
        }
        return Hash.ofBytes(digest.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java has SHA-256", e);
        }
    }
}
