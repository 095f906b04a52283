package thalweg.exchange.gpx;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.fault.Sentence;
import thalweg.json.Findings;
import thalweg.text.Clean;

/**
 * The text of an XML file in the encoding that it declares. Bytes that do not fit the encoding are a finding, never a
 * replacement character in somebody's place name.
 *
 * @see "W3C, Extensible Markup Language (XML) 1.0, F Autodetection of Character Encodings"
 */
final class XmlBytes {

    private static final Pattern DECLARED =
            Pattern.compile("<\\?xml\\s[^>]{0,200}?encoding\\s*=\\s*[\"']([^\"']{1,40})[\"']");

    private static final int LONGEST_DECLARATION = 300;
    private static final int BYTE_ORDER_MARK = 0xFEFF;

    private XmlBytes() {}

    /** Whether the bytes begin as XML does: with a bracket, after a byte order mark or spaces. */
    static boolean looksLikeXml(byte[] bytes) {
        String head = head(bytes, encodingByShape(bytes).orElse(StandardCharsets.ISO_8859_1));
        String plain = head.startsWith("\u00EF\u00BB\u00BF") ? head.substring(3) : head;
        return plain.replace("\uFEFF", "").strip().startsWith("<");
    }

    /** The text without byte order mark; empty where there is a finding. */
    static Optional<String> text(byte[] bytes, Findings findings) {
        Optional<String> text = encoding(bytes, findings).flatMap(known -> decoded(bytes, known, findings));
        if (text.filter(String::isBlank).isPresent()) {
            findings.add("", 1, Sentence.of("the file is empty."));
            return Optional.empty();
        }
        return text;
    }

    private static String head(byte[] bytes, Charset charset) {
        return new String(bytes, 0, Math.min(bytes.length, LONGEST_DECLARATION), charset);
    }

    private static Optional<Charset> encodingByShape(byte[] bytes) {
        if (begins(bytes, 0xFE, 0xFF) || begins(bytes, 0, '<')) {
            return Optional.of(StandardCharsets.UTF_16BE);
        }
        if (begins(bytes, 0xFF, 0xFE) || begins(bytes, '<', 0)) {
            return Optional.of(StandardCharsets.UTF_16LE);
        }
        return begins(bytes, 0xEF, 0xBB, 0xBF) ? Optional.of(StandardCharsets.UTF_8) : Optional.empty();
    }

    private static boolean begins(byte[] bytes, int... with) {
        for (int i = 0; i < with.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != with[i]) {
                return false;
            }
        }
        return true;
    }

    private static Optional<Charset> encoding(byte[] bytes, Findings findings) {
        Optional<Charset> shape = encodingByShape(bytes);
        if (shape.isPresent()) {
            return shape;
        }
        Matcher declared = DECLARED.matcher(head(bytes, StandardCharsets.ISO_8859_1));
        if (!declared.find()) {
            return Optional.of(StandardCharsets.UTF_8);
        }
        try {
            Charset named = Charset.forName(declared.group(1));
            // Bytes that are no UTF-16 but say so were written anew by something that left the declaration alone.
            return Optional.of(named.name().startsWith("UTF-16") ? StandardCharsets.UTF_8 : named);
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            findings.add(
                    "",
                    1,
                    Sentence.of(
                            "the file says that its encoding is \"{0}\", which is not known here; save it again in UTF-8.",
                            Clean.line(declared.group(1), 40)));
            return Optional.empty();
        }
    }

    private static Optional<String> decoded(byte[] bytes, Charset charset, Findings findings) {
        CharsetDecoder decoder = charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer out = CharBuffer.allocate((int) Math.ceil(bytes.length * (double) decoder.maxCharsPerByte()) + 1);
        CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), out, true);
        out.flip();
        String text = out.toString();
        if (result.isError()) {
            int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
            findings.add(
                    "",
                    line,
                    Sentence.of(
                            "there are bytes that are no text in {0}, the encoding of the file; save it again in UTF-8.",
                            charset.name()));
            return Optional.empty();
        }
        return Optional.of(!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text);
    }
}
