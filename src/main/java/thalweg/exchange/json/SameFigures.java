package thalweg.exchange.json;

import java.math.BigDecimal;
import java.util.List;
import thalweg.json.Json;

/** Compares answers of the calculator that different versions may have written. */
final class SameFigures {

    /** Numbers nearer than this, as they are and in parts of the larger one, are the same to whoever reads them. */
    private static final BigDecimal NEAR = new BigDecimal("0.001");

    private static final BigDecimal NEAR_ZERO = new BigDecimal("0.00001");

    private SameFigures() {}

    /** Whether everything in the one is the same in the other, which may hold more. */
    static boolean within(Json one, Json other) {
        if (one instanceof Json.Fields fields && other instanceof Json.Fields more) {
            return fields.values().entrySet().stream()
                    .allMatch(entry -> more.field(entry.getKey())
                            .filter(value -> within(entry.getValue(), value))
                            .isPresent());
        }
        if (one instanceof Json.Items items && other instanceof Json.Items others) {
            return within(items.values(), others.values());
        }
        if (one instanceof Json.Decimal number && other instanceof Json.Decimal second) {
            return near(number.value(), second.value());
        }
        return one.equals(other);
    }

    private static boolean within(List<Json> items, List<Json> others) {
        if (items.size() != others.size()) {
            return false;
        }
        for (int i = 0; i < items.size(); i++) {
            if (!within(items.get(i), others.get(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean near(BigDecimal one, BigDecimal other) {
        BigDecimal apart = one.subtract(other).abs();
        return apart.compareTo(NEAR_ZERO) <= 0
                || apart.compareTo(one.abs().max(other.abs()).multiply(NEAR)) <= 0;
    }
}
