package org.benchmetre.budget.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Prints a product of named units as files keep it: {@code kg/(m2 a)}, {@code 1/m}, {@code 1}. */
final class UnitText {

    private UnitText() {}

    static String of(Map<Atom, Integer> atoms, String money) {
        List<String> above = new ArrayList<>();
        List<String> below = new ArrayList<>();
        atoms.forEach((atom, n) -> (n > 0 ? above : below).add(raised(named(atom, money), Math.abs(n))));
        String top = above.isEmpty() ? "1" : String.join(" ", above);
        if (below.isEmpty()) {
            return top;
        }
        return top + "/" + (below.size() == 1 ? below.get(0) : "(" + String.join(" ", below) + ")");
    }

    private static String named(Atom atom, String money) {
        return switch (atom.symbol()) {
            case "money" -> money;
            case "money_nominal" -> money + "_nominal";
            default -> atom.symbol();
        };
    }

    private static String raised(String symbol, int exponent) {
        return exponent == 1 ? symbol : symbol + exponent;
    }
}
