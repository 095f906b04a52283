package thalweg.json;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Writes JSON: canonical for hashing and comparing, or indented for people. */
public final class JsonText {

    /** Beyond this a number read elsewhere as a double would not be the same. Source: RFC 8785, 3.2.2.3. */
    private static final BigDecimal LARGEST_WHOLE = BigDecimal.valueOf(9_007_199_254_740_991L);

    private static final int LONGEST_PLAIN = 20;

    private JsonText() {}

    /**
     * The canonical text of a value: no spaces, names in the order of their UTF-16 units.
     *
     * @param value whose numbers are whole and within 2^53 - 1 of zero, and whose texts hold no half characters, as
     *     everything that is hashed here does
     * @see "RFC 8785, JSON Canonicalization Scheme"
     */
    public static String canonical(Json value) {
        StringBuilder out = new StringBuilder();
        canonical(value, out);
        if (!isWhole(out)) {
            throw new IllegalArgumentException("a canonical text holds no lone surrogate (RFC 8785, 3.2.2.2)");
        }
        return out.toString();
    }

    /** Whether every surrogate in the text has its other half. */
    static boolean isWhole(CharSequence text) {
        return text.codePoints().noneMatch(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE);
    }

    /** Without an exponent where that is short; exponents that are not are never written out. */
    static String number(BigDecimal number) {
        return Math.abs((long) number.scale()) <= LONGEST_PLAIN ? number.toPlainString() : number.toString();
    }

    private static void canonical(Json value, StringBuilder out) {
        if (value instanceof Json.Fields fields) {
            String mark = "{";
            for (Map.Entry<String, Json> field : new TreeMap<>(fields.values()).entrySet()) {
                out.append(mark);
                quoted(field.getKey(), out);
                out.append(':');
                canonical(field.getValue(), out);
                mark = ",";
            }
            out.append(fields.values().isEmpty() ? "{}" : "}");
        } else if (value instanceof Json.Items items) {
            out.append('[');
            for (int i = 0; i < items.values().size(); i++) {
                out.append(i == 0 ? "" : ",");
                canonical(items.values().get(i), out);
            }
            out.append(']');
        } else if (value instanceof Json.Decimal number) {
            out.append(whole(number.value()));
        } else {
            scalar(value, out);
        }
    }

    private static String whole(BigDecimal number) {
        if (!isWhole(number)) {
            throw new IllegalArgumentException("a canonical text holds whole numbers only, not " + number);
        }
        return number.stripTrailingZeros().toBigIntegerExact().toString();
    }

    private static boolean isWhole(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() <= 0 && stripped.abs().compareTo(LARGEST_WHOLE) <= 0;
    }

    /** Whether every number in the value is whole and small enough for {@link #canonical}. */
    public static boolean isCanonical(Json value) {
        if (value instanceof Json.Fields fields) {
            return fields.values().values().stream().allMatch(JsonText::isCanonical);
        }
        if (value instanceof Json.Items items) {
            return items.values().stream().allMatch(JsonText::isCanonical);
        }
        return !(value instanceof Json.Decimal number) || isWhole(number.value());
    }

    /** The value over several lines, names in their own order, a line end after the last. */
    public static String indented(Json value) {
        StringBuilder out = new StringBuilder();
        indented(value, "", out);
        return out.append('\n').toString();
    }

    /** The same within other lines, which begin with that margin; no line end after it. */
    public static String indented(Json value, String margin) {
        StringBuilder out = new StringBuilder();
        indented(value, margin, out);
        return out.toString();
    }

    /** The value on one line, names in their own order. */
    public static String line(Json value) {
        StringBuilder out = new StringBuilder();
        line(value, out);
        return out.toString();
    }

    private static void indented(Json value, String margin, StringBuilder out) {
        if (value instanceof Json.Fields fields
                && !fields.values().isEmpty()
                && line(value).length() > 80) {
            String inner = margin + "  ";
            String mark = "{\n";
            for (Map.Entry<String, Json> field : fields.values().entrySet()) {
                out.append(mark).append(inner);
                quoted(field.getKey(), out);
                out.append(": ");
                indented(field.getValue(), inner, out);
                mark = ",\n";
            }
            out.append('\n').append(margin).append('}');
        } else if (value instanceof Json.Items items && line(value).length() > 80) {
            list(items.values(), margin, out);
        } else {
            line(value, out);
        }
    }

    private static void list(List<Json> values, String margin, StringBuilder out) {
        String inner = margin + "  ";
        String mark = "[\n";
        for (Json item : values) {
            out.append(mark).append(inner);
            indented(item, inner, out);
            mark = ",\n";
        }
        out.append('\n').append(margin).append(']');
    }

    private static void line(Json value, StringBuilder out) {
        if (value instanceof Json.Fields fields) {
            String mark = "{";
            for (Map.Entry<String, Json> field : fields.values().entrySet()) {
                out.append(mark);
                quoted(field.getKey(), out);
                out.append(": ");
                line(field.getValue(), out);
                mark = ", ";
            }
            out.append(fields.values().isEmpty() ? "{}" : "}");
        } else if (value instanceof Json.Items items) {
            out.append('[');
            for (int i = 0; i < items.values().size(); i++) {
                out.append(i == 0 ? "" : ", ");
                line(items.values().get(i), out);
            }
            out.append(']');
        } else {
            scalar(value, out);
        }
    }

    private static void scalar(Json value, StringBuilder out) {
        if (value instanceof Json.Text text) {
            quoted(text.value(), out);
        } else if (value instanceof Json.Flag flag) {
            out.append(flag.value());
        } else if (value instanceof Json.Decimal number) {
            out.append(number(number.value()));
        } else {
            out.append("null");
        }
    }

    /** Escapes exactly what RFC 8785, 3.2.2.2 says, and nothing else. */
    private static void quoted(String text, StringBuilder out) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char unit = text.charAt(i);
            switch (unit) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\b' -> out.append("\\b");
                case '\t' -> out.append("\\t");
                case '\n' -> out.append("\\n");
                case '\f' -> out.append("\\f");
                case '\r' -> out.append("\\r");
                default -> {
                    if (unit < ' ') {
                        out.append("\\u00")
                                .append(Character.forDigit(unit >> 4, 16))
                                .append(Character.forDigit(unit & 15, 16));
                    } else {
                        out.append(unit);
                    }
                }
            }
        }
        out.append('"');
    }
}
