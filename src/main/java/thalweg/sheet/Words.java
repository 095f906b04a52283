package thalweg.sheet;

/**
 * A piece of text on a sheet, complete without its tone and its link.
 *
 * @param text not empty; line feeds are kept where somebody wrote them
 * @param tone what kind of news it brings
 * @param link empty text where there is none, else a {@code geo:} address or # and the id of a section of the sheet
 */
public record Words(String text, Tone tone, String link) {

    public Words {
        text = Inert.of(text);
        if (text.isEmpty()) {
            throw new IllegalArgumentException("words say something");
        }
        if (!link.isEmpty() && !link.startsWith("geo:") && !link.startsWith("#")) {
            throw new IllegalArgumentException("a sheet links to nothing outside but a place: " + link);
        }
    }

    /** Plain words. */
    public static Words of(String text) {
        return new Words(text, Tone.PLAIN, "");
    }

    /** Words that bring that kind of news. */
    public static Words of(String text, Tone tone) {
        return new Words(text, tone, "");
    }

    /** The same words, leading somewhere. */
    public Words to(String address) {
        return new Words(text, tone, address);
    }
}
