package thalweg.logbook;

import thalweg.ledger.Hash;

/**
 * A photo that somebody keeps. The picture itself stays where it is: its name finds it, its hash proves it.
 *
 * @param file its name without folders; not blank
 * @param hash SHA-256 of its bytes
 * @param caption what it shows; empty text where nobody said
 */
public record Photo(String file, Hash hash, String caption) {

    public Photo {
        if (file.isBlank()) {
            throw new IllegalArgumentException("a photo has a file name");
        }
    }
}
