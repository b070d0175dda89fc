package org.benchmetre.budget;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToLongFunction;

/**
 * Texts as numbers, so that one program can carry both. The code of a text follows from its letters alone, so it is the same in every
 * run, in every thread and on every machine; the empty text has code 0. This remembers which texts the codes stand for. An optional
 * number without a value is a NaN that carries the code of its reason. For several threads.
 *
 * <p>A code is a whole number of 50 bits, which a double and a NaN both hold exactly: 49 bits of a hash, and a last bit that is set
 * where the text is not in lower case throughout. Two texts with one code (among ten thousand texts the chance is less than one in
 * ten million) are refused, whichever comes first.
 */
public final class Texts implements Serializable {

    private static final long serialVersionUID = 1L;
    private static final int BITS = 50;
    private static final long MASK = (1L << BITS) - 1;
    /** A quiet NaN with the highest of the remaining bits set, which no arithmetic makes by itself. */
    private static final long NO_NUMBER = 0x7ffc_0000_0000_0000L;

    private static final long FNV_START = 0xcbf2_9ce4_8422_2325L;
    private static final long FNV_PRIME = 0x0000_0100_0000_01b3L;
    private static final long MIX = 0xff51_afd7_ed55_8ccdL;

    private record Known(String text, long folded) implements Serializable {}

    private final Texts below;
    private final Map<Long, Known> known = new ConcurrentHashMap<>();
    private final transient ToLongFunction<String> hash;

    /** The empty text alone. */
    public Texts() {
        this(Texts::hash);
    }

    /** The same with another hash, whose collisions can be foreseen. */
    Texts(ToLongFunction<String> hash) {
        this(null, hash);
        code("");
    }

    private Texts(Texts below, ToLongFunction<String> hash) {
        this.below = below;
        this.hash = hash;
    }

    /** The hash is a function, which is not written; what is read back has the usual one. */
    private Object readResolve() {
        Texts all = new Texts(below, Texts::hash);
        all.known.putAll(known);
        return all;
    }

    /**
     * Texts of its own over these: it knows what these know, and what is added to it these do not learn.
     *
     * @return the texts, at no cost
     */
    public Texts over() {
        return new Texts(this, hash);
    }

    /**
     * The code of a text.
     *
     * @param text any text
     * @return its code, a whole number from 0 to 2^50 - 1
     * @throws FormulaException when another text has the same code
     */
    public double code(String text) {
        long code = codeOf(text);
        Known other = find(code);
        if (other == null) {
            String lower = text.toLowerCase(Locale.ROOT);
            long folded = lower.equals(text) ? code : (long) code(lower);
            other = known.putIfAbsent(code, new Known(text, folded));
        }
        if (other != null && !other.text().equals(text)) {
            throw new FormulaException("The texts '" + other.text() + "' and '" + text
                    + "' cannot be told apart by their codes; change a letter of one.");
        }
        return code;
    }

    private long codeOf(String text) {
        if (text.isEmpty()) {
            return 0;
        }
        long isFolded = text.equals(text.toLowerCase(Locale.ROOT)) ? 0 : 1;
        return (hash.applyAsLong(text) << 1 | isFolded) & MASK;
    }

    /** The Fowler-Noll-Vo hash, variant 1a, over the 16-bit letters, its bits then mixed as MurmurHash3 ends. */
    private static long hash(String text) {
        long hash = FNV_START;
        for (int i = 0; i < text.length(); i++) {
            hash = (hash ^ text.charAt(i)) * FNV_PRIME;
        }
        hash = (hash ^ hash >>> 33) * MIX;
        return hash ^ hash >>> 33;
    }

    private Known find(long code) {
        for (Texts at = this; at != null; at = at.below) {
            Known found = at.known.get(code);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private Known known(long code) {
        Known found = find(code);
        if (found == null) {
            throw new FormulaException("No text here has the code " + code + ".");
        }
        return found;
    }

    /**
     * The text of a code.
     *
     * @param code given out by {@link #code}
     * @return the text
     * @throws FormulaException when no text that is known here has it
     */
    public String text(double code) {
        return known((long) code).text();
    }

    private long folded(double code) {
        long exact = (long) code;
        return (exact & 1) == 0 ? exact : known(exact).folded();
    }

    /**
     * Whether two texts are the same without regard to case.
     *
     * @param left a code
     * @param right a code
     * @return true when they are
     */
    public boolean same(double left, double right) {
        return left == right || folded(left) == folded(right);
    }

    /**
     * Whether a text sorts before another without regard to case.
     *
     * @param left a code
     * @param right a code
     * @return true when it does; false when they are the same
     */
    public boolean before(double left, double right) {
        return text(folded(left)).compareTo(text(folded(right))) < 0;
    }

    /**
     * Whether a list of keys, apart by spaces, has a key.
     *
     * @param list a code
     * @param key a code
     * @return true when it has
     */
    public boolean hasKey(double list, double key) {
        String all = text(folded(list));
        String wanted = text(folded(key));
        for (int at = all.indexOf(wanted); at >= 0; at = all.indexOf(wanted, at + 1)) {
            int end = at + wanted.length();
            if ((at == 0 || all.charAt(at - 1) == ' ') && (end == all.length() || all.charAt(end) == ' ')) {
                return true;
            }
            if (end == all.length()) {
                return false;
            }
        }
        return false;
    }

    /**
     * Texts one after the other, as one text.
     *
     * @param parts codes, a NaN for a text that was not found
     * @return the code of the whole; a NaN when a part is one
     */
    public double joined(double... parts) {
        StringBuilder whole = new StringBuilder();
        for (double part : parts) {
            if (Double.isNaN(part)) {
                return Double.NaN;
            }
            whole.append(text(part));
        }
        return code(whole.toString());
    }

    /**
     * A number as people read it: rounded half away from zero as it is written in decimals, with commas between thousands.
     *
     * @param number any number
     * @param decimals how many, from 0 to 9
     * @return the code of the text; a NaN where the number is none
     */
    public double shown(double number, double decimals) {
        if (!Double.isFinite(number)) {
            return Double.NaN;
        }
        BigDecimal rounded = BigDecimal.valueOf(number).setScale((int) decimals, RoundingMode.HALF_UP);
        return code(String.format(Locale.ROOT, "%,." + (int) decimals + "f", rounded));
    }

    /**
     * An optional number without a value.
     *
     * @param reason the code of the reason
     * @return a NaN that carries it
     */
    public static double noNumber(double reason) {
        return Double.longBitsToDouble(NO_NUMBER | (long) reason);
    }

    /**
     * Whether an optional number carries a reason in place of a value.
     *
     * @param value an optional number
     * @return true for what {@link #noNumber} made
     */
    public static boolean isNoNumber(double value) {
        return (Double.doubleToRawLongBits(value) & NO_NUMBER) == NO_NUMBER && Double.isNaN(value);
    }

    /**
     * The reason an optional number carries.
     *
     * @param value what {@link #noNumber} made
     * @return the text of the reason
     */
    public String reason(double value) {
        return text(Double.doubleToRawLongBits(value) & MASK);
    }
}
