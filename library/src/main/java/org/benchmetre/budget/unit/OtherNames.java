package org.benchmetre.budget.unit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * What else people write for a unit: {@code feet}, {@code hours}, {@code lbs.}, {@code sq. ft.}, {@code m²}, {@code deg F}, {@code L per plant}.
 * Words are taken in any case; symbols that differ from another only by case (mg and Mg) are not guessed at.
 */
final class OtherNames {

    /** Words by the symbol, or product of symbols, they stand for. */
    private static final Map<String, String> WORDS = new LinkedHashMap<>();

    /** Taken in this case only. */
    private static final Map<String, String> EXACT =
            Map.of("l", "L", "ml", "mL", "C", "degC", "F", "degF", "c", "degC", "f", "degF");

    private static final String LIKE_SIGNS = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻₂·µμ";
    private static final String SIGNS = "0123456789-2 uu";
    private static final Pattern SQUARE = Pattern.compile("(?i)\\bsq(?:uare\\s+|\\.\\s*|\\s+)([a-z]+)");
    private static final Pattern CUBIC = Pattern.compile("(?i)\\bcu(?:bic\\s+|\\.\\s*|\\s+)([a-z]+)");
    private static final Pattern LINEAR = Pattern.compile("(?i)\\b(?:lin|linear|lineal)\\.?\\s+(?=[a-z])");
    private static final Pattern PER = Pattern.compile("(?i)(?:^|\\s+)per\\s+|\\s*/\\s*");
    private static final Pattern FUEL_UNIT = Pattern.compile("(?i)\\bfuel units?\\b");
    private static final Pattern DEGREES = Pattern.compile("(?i)°\\s*|\\bdeg(?:rees?)?\\s+(?=[cf]\\b)");
    private static final Pattern SHORTENED = Pattern.compile("(?<=[A-Za-z])\\.(?=$|[\\s/)])");
    private static final Pattern OF_THE_STATES = Pattern.compile("(?i)\\bu\\.?s\\.?\\s+(?=gal)");
    private static final Pattern INCH_SIGN = Pattern.compile("[\"″]");
    private static final Pattern FOOT_SIGN = Pattern.compile("['′]");

    static {
        words("m", "metre metres meter meters mtr mtrs");
        words("mm", "millimetre millimetres millimeter millimeters mms");
        words("cm", "centimetre centimetres centimeter centimeters cms");
        words("km", "kilometre kilometres kilometer kilometers");
        words("in", "inch inches");
        words("ft", "foot feet lf");
        words("yd", "yard yards yds");
        words("mil", "mils");
        words("acre", "acres ac");
        words("ha", "hectare hectares");
        words("m2", "sqm");
        words("ft2", "sqft sf");
        words("ft3", "cuft cf");
        words("m3", "cum cbm");
        words("L", "litre litres liter liters ltr ltrs lt lts");
        words("mL", "millilitre millilitres milliliter milliliters");
        words("gal", "gals gallon gallons");
        words("kg", "kgs kilo kilos kilogram kilograms");
        words("g", "gram grams gm gms");
        words("lb", "lbs pound pounds");
        words("psi", "psi");
        words("oz", "ozs ounce ounces");
        words("t", "tonne tonnes");
        words("s", "sec second seconds");
        words("min", "mins minute minutes");
        words("h", "hr hrs hour hours");
        words("d", "day days");
        words("wk", "wks week weeks");
        words("mo", "mos month months");
        words("a", "yr yrs year years annum");
        words("%", "percent pct");
        words("kWh", "kwh");
        words("kW", "kw");
        words("kPa", "kpa");
        words("W", "watt watts");
        words("Btu", "btu btus");
        words("Btu/h", "btuh");
        words("bar", "bars");
        words("K", "kelvin kelvins");
        words("degC", "celsius");
        words("degF", "fahrenheit");
        words("gal/min", "gpm");
        words("gal/h", "gph");
        words("L/h", "lph");
        words("L/min", "lpm");
        words("person", "persons people");
        words("bench", "benches");
        for (String count : "plant outlet pack crop line zone item driver container".split(" ")) {
            words(count, count + "s");
        }
    }

    private OtherNames() {}

    private static void words(String symbol, String words) {
        for (String word : words.split(" ")) {
            WORDS.put(word, symbol);
        }
        if (symbol.length() > 1 && !symbol.equals("mL")) {
            WORDS.putIfAbsent(symbol.toLowerCase(Locale.ROOT), symbol);
        }
    }

    /** What a word stands for, in symbols the project knows; empty when nothing is known of it. */
    static String meant(String word) {
        String exact = EXACT.getOrDefault(word, "");
        return exact.isEmpty() ? WORDS.getOrDefault(word.toLowerCase(Locale.ROOT), "") : exact;
    }

    /** A text with raised digits, signs, points of shortened words, spelled-out powers and <i>per</i> put into the form that is read. */
    static String plain(String text) {
        StringBuilder plain = new StringBuilder();
        text.chars().forEach(c -> {
            int sign = LIKE_SIGNS.indexOf(c);
            plain.append(sign < 0 ? (char) c : SIGNS.charAt(sign));
        });
        String known = SHORTENED.matcher(plain).replaceAll("");
        known = DEGREES.matcher(known).replaceAll("deg").replace("^", "");
        known = INCH_SIGN.matcher(known).replaceAll("in");
        known = FOOT_SIGN.matcher(known).replaceAll("ft");
        known = OF_THE_STATES.matcher(known).replaceAll("");
        known = LINEAR.matcher(known).replaceAll("");
        known = SQUARE.matcher(known).replaceAll(result -> result.group(1) + "2");
        known = CUBIC.matcher(known).replaceAll(result -> result.group(1) + "3");
        known = FUEL_UNIT.matcher(known).replaceAll("fuel_unit");
        known = PER.matcher(known).replaceAll("/");
        return known.startsWith("/") ? "1" + known : known;
    }

    /** Every word and symbol that may be written. */
    static Collection<String> all() {
        List<String> all = new ArrayList<>(Atoms.symbols());
        WORDS.keySet().stream().filter(word -> !all.contains(word)).forEach(all::add);
        return all;
    }
}
