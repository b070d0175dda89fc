package org.benchmetre.budget.unit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A unit as people write it: {@code USD/m²/yr}, {@code g/plant/crop}, {@code °C}, {@code Pa·s}. What is divided by stands behind a slash of
 * its own, spans of time last. Not for files, which keep the spelling of {@link UnitText}.
 */
final class WrittenUnit {

    /** Units whose written name is not their symbol. */
    private static final Map<String, String> NAMES =
            Map.of("a", "yr", "degC", "°C", "degF", "°F", "uS", "µS", "mH2O", "mH₂O", "fuel_unit", "fuel unit");

    private static final Set<String> SPANS = Set.of("d", "wk", "mo", "a");
    /** Told behind the unit, since they say which money it is of. */
    private static final Set<String> REMARKS = Set.of("real", "nominal");

    private WrittenUnit() {}

    static String of(Map<Atom, Integer> atoms, String currency) {
        List<String> above = new ArrayList<>();
        List<String> below = new ArrayList<>();
        String remark = "";
        for (Map.Entry<Atom, Integer> part : inOrder(atoms)) {
            String symbol = part.getKey().symbol();
            remark = symbol.equals("money_nominal") ? "nominal" : REMARKS.contains(symbol) ? symbol : remark;
            if (!REMARKS.contains(symbol)) {
                String written = name(symbol, currency) + raised(Math.abs(part.getValue()));
                (part.getValue() > 0 ? above : below).add(written);
            }
        }
        String top = above.isEmpty() ? "1" : String.join("·", above);
        return top
                + (below.isEmpty() ? "" : "/" + String.join("/", below))
                + (remark.isEmpty() ? "" : " (" + remark + ")");
    }

    private static List<Map.Entry<Atom, Integer>> inOrder(Map<Atom, Integer> atoms) {
        return atoms.entrySet().stream()
                .sorted(Comparator.comparing(
                        part -> SPANS.contains(part.getKey().symbol())))
                .toList();
    }

    private static String name(String symbol, String currency) {
        return symbol.startsWith("money") ? currency : NAMES.getOrDefault(symbol, symbol);
    }

    private static String raised(int exponent) {
        if (exponent == 1) {
            return "";
        }
        StringBuilder digits = new StringBuilder();
        Integer.toString(exponent).chars().forEach(digit -> digits.append("⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(digit - '0')));
        return digits.toString();
    }
}
