package org.benchmetre.budget.unit;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The named units the project knows. Spellings follow the Unified Code for Units of Measure where it has them. Definitions: inch
 * 0.0254 m, pound 0.45359237 kg, standard gravity 9.80665 m/s2, gallon 231 in3 (NIST Special Publication 811, appendix B);
 * international table Btu 1055.05585262 J; the year {@code a} is 365.25 days and the month a twelfth of it (UCUM). The inch of
 * film thickness, {@code mil}, is a thousandth of an inch. The equivalent of charge {@code eq} is a base of its own, so that charge does
 * not add to amount of substance (UCUM makes it a mole).
 */
final class Atoms {

    private static final List<String> MEASURED =
            List.of("m", "kg", "s", "K", "mol", "A", "eq", "money", "money_nominal");
    private static final Map<String, Atom> KNOWN = new LinkedHashMap<>();

    static {
        for (String base : MEASURED) {
            KNOWN.put(base, Atom.base(base));
        }
        for (String opaque : new String[] {
            "plant",
            "outlet",
            "pack",
            "crop",
            "bench",
            "line",
            "zone",
            "item",
            "driver",
            "container",
            "person",
            "real",
            "nominal",
            "fuel_unit"
        }) {
            KNOWN.put(opaque, Atom.base(opaque));
        }
        pure("%", "0.01");
        scaled("km", "1000", "m", 1);
        scaled("cm", "0.01", "m", 1);
        scaled("mm", "0.001", "m", 1);
        scaled("in", "0.0254", "m", 1);
        scaled("ft", "0.3048", "m", 1);
        scaled("yd", "0.9144", "m", 1);
        scaled("mil", "0.0000254", "m", 1);
        scaled("ha", "10000", "m", 2);
        scaled("acre", "4046.8564224", "m", 2);
        scaled("L", "0.001", "m", 3);
        scaled("mL", "0.000001", "m", 3);
        scaled("gal", "0.003785411784", "m", 3);
        scaled("g", "0.001", "kg", 1);
        scaled("mg", "0.000001", "kg", 1);
        scaled("t", "1000", "kg", 1);
        scaled("lb", "0.45359237", "kg", 1);
        scaled("oz", "0.028349523125", "kg", 1);
        scaled("min", "60", "s", 1);
        scaled("h", "3600", "s", 1);
        scaled("d", "86400", "s", 1);
        scaled("wk", "604800", "s", 1);
        scaled("mo", "2629800", "s", 1);
        scaled("a", "31557600", "s", 1);
        scaled("mmol", "0.001", "mol", 1);
        scaled("meq", "0.001", "eq", 1);
        derived("Pa", "1", Map.of("kg", 1, "m", -1, "s", -2));
        derived("kPa", "1000", Map.of("kg", 1, "m", -1, "s", -2));
        derived("bar", "100000", Map.of("kg", 1, "m", -1, "s", -2));
        derived("mH2O", "9806.65", Map.of("kg", 1, "m", -1, "s", -2));
        put("psi", Ratio.of("4.4482216152605").over(Ratio.of("0.00064516")), Map.of("kg", 1, "m", -1, "s", -2), 0);
        derived("J", "1", Map.of("kg", 1, "m", 2, "s", -2));
        derived("MJ", "1000000", Map.of("kg", 1, "m", 2, "s", -2));
        derived("kWh", "3600000", Map.of("kg", 1, "m", 2, "s", -2));
        derived("Btu", "1055.05585262", Map.of("kg", 1, "m", 2, "s", -2));
        derived("W", "1", Map.of("kg", 1, "m", 2, "s", -3));
        derived("kW", "1000", Map.of("kg", 1, "m", 2, "s", -3));
        derived("hp", "745.69987158227022", Map.of("kg", 1, "m", 2, "s", -3));
        derived("dS", "0.1", Map.of("kg", -1, "m", -2, "s", 3, "A", 2));
        derived("mS", "0.001", Map.of("kg", -1, "m", -2, "s", 3, "A", 2));
        derived("uS", "0.000001", Map.of("kg", -1, "m", -2, "s", 3, "A", 2));
        put("degC", Ratio.ONE, Map.of("K", 1), 273.15);
        put("degF", Ratio.of("5").over(Ratio.of("9")), Map.of("K", 1), 273.15 - 160.0 / 9.0);
    }

    private Atoms() {}

    static Optional<Atom> find(String symbol) {
        return Optional.ofNullable(KNOWN.get(symbol));
    }

    /** Whether a base is counted and not measured. */
    static boolean isCounted(String base) {
        return !MEASURED.contains(base);
    }

    static Collection<String> symbols() {
        return KNOWN.keySet();
    }

    private static void pure(String symbol, String factor) {
        put(symbol, Ratio.of(factor), Map.of(), 0);
    }

    private static void scaled(String symbol, String factor, String base, int exponent) {
        put(symbol, Ratio.of(factor), Map.of(base, exponent), 0);
    }

    private static void derived(String symbol, String factor, Map<String, Integer> dimension) {
        put(symbol, Ratio.of(factor), dimension, 0);
    }

    private static void put(String symbol, Ratio factor, Map<String, Integer> dimension, double zero) {
        KNOWN.put(symbol, new Atom(symbol, factor, new TreeMap<>(dimension), zero));
    }
}
