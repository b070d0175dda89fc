package org.benchmetre.budget.unit;

import java.io.Serializable;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A unit of measurement: a product of named units with whole exponents, such as {@code L/h} or {@code W/(m2 K)}.
 *
 * <p>Two units are equal when they have the same dimension and exactly the same size, however they are written: {@code L} equals
 * {@code 0.001 m3} written as {@code dm3} would. There is no hidden base system: a number keeps the unit printed beside it, and
 * {@link #factorTo} says what to multiply by when another is wanted. Not a quantity: it carries no number.
 *
 * <p>Money of today ({@code money}) and money of a later year ({@code money_nominal}) are different dimensions. Temperatures
 * convert as levels only through {@link #convertLevel}; in products a degree Celsius is a kelvin.
 */
public final class Unit implements Serializable {

    private static final long serialVersionUID = 1L;

    /** The unit of a plain number. */
    public static final Unit ONE = new Unit(new LinkedHashMap<>());

    /** Money at today's prices, in the scenario's currency. */
    public static final Unit MONEY = parse("money");

    /** Money of the year it is paid in, in the scenario's currency. */
    public static final Unit MONEY_NOMINAL = parse("money_nominal");

    /** The metre. */
    public static final Unit METRE = parse("m");

    /** The square metre. */
    public static final Unit SQUARE_METRE = parse("m2");

    private final LinkedHashMap<Atom, Integer> atoms;
    private final Ratio factor;
    private final TreeMap<String, Integer> dimension;

    private Unit(LinkedHashMap<Atom, Integer> atoms) {
        this.atoms = atoms;
        this.dimension = new TreeMap<>();
        Ratio size = Ratio.ONE;
        for (Map.Entry<Atom, Integer> part : atoms.entrySet()) {
            size = size.times(part.getKey().factor().power(part.getValue()));
            part.getKey().dimension().forEach((base, n) -> dimension.merge(base, n * part.getValue(), Integer::sum));
        }
        dimension.values().removeIf(n -> n == 0);
        this.factor = size;
    }

    /**
     * Reads a unit as files keep it: factors apart by a space or a point, at most one level of parentheses after a slash, whole
     * exponents behind the symbol. Examples: {@code m2}, {@code L/h}, {@code W/(m2 K)}, {@code 1/m}, {@code 1}. Takes what
     * {@link #display} writes too, and words: {@code m²}, {@code feet}, {@code g/plant/crop}, {@code hours per year}.
     *
     * @param text the unit as written
     * @return the unit
     * @throws UnitException when a symbol is unknown or the text does not follow the form
     */
    public static Unit parse(String text) {
        return UnitParser.parse(text, Map.of());
    }

    /**
     * Reads a unit that may also use names of its own, such as a currency code or the unit of an item.
     *
     * @param text the unit as written
     * @param names further names and the units they stand for
     * @return the unit
     * @throws UnitException when a symbol is unknown or the text does not follow the form
     */
    public static Unit parse(String text, Map<String, Unit> names) {
        return UnitParser.parse(text, names);
    }

    /**
     * A unit that converts to nothing else, such as {@code roll}.
     *
     * @param symbol letters and underscores
     * @return the unit
     */
    public static Unit opaque(String symbol) {
        return of(Atom.base(symbol));
    }

    /**
     * The symbols and words that {@link #parse(String)} knows.
     *
     * @return symbols in the order of their definition, then other names
     */
    public static Collection<String> names() {
        return OtherNames.all();
    }

    static Unit of(Atom atom) {
        LinkedHashMap<Atom, Integer> atoms = new LinkedHashMap<>();
        atoms.put(atom, 1);
        return new Unit(atoms);
    }

    /**
     * Product.
     *
     * @param other the other unit
     * @return the unit of a product
     */
    public Unit times(Unit other) {
        return combined(other, 1);
    }

    /**
     * Quotient.
     *
     * @param other the unit divided by
     * @return the unit of a quotient
     */
    public Unit over(Unit other) {
        return combined(other, -1);
    }

    /**
     * Whole power.
     *
     * @param exponent any whole number
     * @return this unit to the exponent
     */
    public Unit power(int exponent) {
        LinkedHashMap<Atom, Integer> raised = new LinkedHashMap<>();
        atoms.forEach((atom, n) -> raised.put(atom, n * exponent));
        raised.values().removeIf(n -> n == 0);
        return new Unit(raised);
    }

    private Unit combined(Unit other, int sign) {
        LinkedHashMap<Atom, Integer> all = new LinkedHashMap<>(atoms);
        other.atoms.forEach((atom, n) -> all.merge(atom, sign * n, Integer::sum));
        all.values().removeIf(n -> n == 0);
        return new Unit(all);
    }

    /**
     * Whether both measure the same kind of thing.
     *
     * @param other the other unit
     * @return true when a number in one can be converted to the other
     */
    public boolean sameDimension(Unit other) {
        return dimension.equals(other.dimension);
    }

    /**
     * How often a named unit stands in this one as it is written.
     *
     * @param symbol the name, such as {@code mo}
     * @return its exponent, below zero after the slash; 0 when the name is not in it
     */
    public int exponentOf(String symbol) {
        return atoms.entrySet().stream()
                .filter(part -> part.getKey().symbol().equals(symbol))
                .mapToInt(Map.Entry::getValue)
                .sum();
    }

    /**
     * Whether this is a plain number of some size, such as {@code 1}, {@code %} or {@code mm/m}.
     *
     * @return true when the dimension is empty
     */
    public boolean isPure() {
        return dimension.isEmpty();
    }

    /**
     * Whether this counts things, such as {@code 1}, {@code plant} or {@code bench}.
     *
     * @return true when a number of it is so many pieces
     */
    public boolean isCount() {
        boolean ofOneThing = dimension.size() == 1 && dimension.firstEntry().getValue() == 1;
        return factor.equals(Ratio.ONE) && (isPure() || ofOneThing && Atoms.isCounted(dimension.firstKey()));
    }

    /**
     * The thing that is counted, where there is one: {@code plant} in {@code plant} and in {@code money/plant}, 1 in a plain number.
     *
     * @return empty where nothing is counted, or several things are
     */
    public Optional<Unit> counted() {
        List<Atom> things = atoms.keySet().stream()
                .filter(atom ->
                        Atoms.isCounted(atom.symbol()) && atom.dimension().containsKey(atom.symbol()))
                .toList();
        return things.size() == 1 ? Optional.of(of(things.get(0))) : isCount() ? Optional.of(ONE) : Optional.empty();
    }

    /**
     * Whether the unit has money in it, of either kind.
     *
     * @return true for money, money per metre and so on
     */
    public boolean hasMoney() {
        return dimension.containsKey("money") || dimension.containsKey("money_nominal");
    }

    /**
     * Whether the unit has money of a later year in it.
     *
     * @return true for nominal money
     */
    public boolean isNominal() {
        return dimension.containsKey("money_nominal");
    }

    /**
     * What a number in this unit is multiplied by to become one in the target.
     *
     * @param target a unit of the same dimension
     * @return the exact factor
     * @throws UnitException when the dimensions differ
     */
    public Ratio factorTo(Unit target) {
        if (!sameDimension(target)) {
            throw new UnitException(
                    "Unit " + this + " does not convert to " + target + ": they measure different things.");
        }
        return factor.over(target.factor);
    }

    /**
     * Converts a typed entry. Temperatures convert as levels (32 degF is 0 degC), all else by its factor.
     *
     * @param value a number in this unit
     * @param target a unit of the same dimension
     * @return the number in the target
     * @throws UnitException when the dimensions differ
     */
    public double convertLevel(double value, Unit target) {
        if (equals(target) && zero() == target.zero()) {
            return value;
        }
        double scaled = apply(value, factorTo(target));
        double shift = (zero() - target.zero()) / target.factor.toDouble();
        return shift == 0 ? scaled : scaled + shift;
    }

    /**
     * Where the scale of a temperature level begins.
     *
     * @return the zero in kelvin, or 0 for all other units
     */
    public double zero() {
        boolean single = atoms.size() == 1 && atoms.values().iterator().next() == 1;
        return single ? atoms.keySet().iterator().next().zero() : 0;
    }

    /**
     * Multiplies by a factor the way a spreadsheet formula would: by division when the factor is one over a whole number.
     *
     * @param value any number
     * @param factor an exact factor
     * @return value times factor
     */
    public static double apply(double value, Ratio factor) {
        if (factor.numerator().equals(java.math.BigInteger.ONE)) {
            return value / factor.denominator().doubleValue();
        }
        return value * factor.toDouble();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Unit unit && factor.equals(unit.factor) && dimension.equals(unit.dimension);
    }

    @Override
    public int hashCode() {
        return 31 * factor.hashCode() + dimension.hashCode();
    }

    /** The unit as {@link #parse(String)} reads it back. */
    @Override
    public String toString() {
        return UnitText.of(atoms, "money");
    }

    /**
     * The unit as people write it, with the name of the currency in place of {@code money}. {@link #parse(String, Map)} reads it too.
     *
     * @param currency ISO 4217 code
     * @return for example {@code EUR/m²/yr}, {@code g/plant/crop}, {@code °C}
     */
    public String display(String currency) {
        return WrittenUnit.of(atoms, currency);
    }

    /**
     * The unit as files keep it, with the name of the currency in place of {@code money}.
     *
     * @param currency ISO 4217 code
     * @return for example {@code EUR/(m2 a)}
     */
    public String inFiles(String currency) {
        return UnitText.of(atoms, currency);
    }
}
