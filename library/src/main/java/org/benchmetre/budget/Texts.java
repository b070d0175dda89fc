package org.benchmetre.budget;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Texts as numbers, so that one program can carry both: each text has a code, the empty text has code 0. An optional number without
 * a value is a NaN that carries the code of its reason. Not for use from several threads at once: take a {@link #copy()}.
 */
public final class Texts implements Serializable {

    private static final long serialVersionUID = 1L;
    private static final long NO_NUMBER = 0x7ff8_4000_0000_0000L;

    private final List<String> texts;
    private final List<Integer> folded;
    private final Map<String, Integer> codes;

    /** A table with the empty text alone. */
    public Texts() {
        this(List.of(), List.of(), Map.of());
        code("");
    }

    private Texts(List<String> texts, List<Integer> folded, Map<String, Integer> codes) {
        this.texts = new ArrayList<>(texts);
        this.folded = new ArrayList<>(folded);
        this.codes = new HashMap<>(codes);
    }

    /**
     * A table of its own with the same codes.
     *
     * @return the copy
     */
    public Texts copy() {
        return new Texts(texts, folded, codes);
    }

    /**
     * The code of a text, given out at first sight.
     *
     * @param text any text
     * @return its code, a whole number
     */
    public double code(String text) {
        Integer known = codes.get(text);
        return known != null ? known : added(text);
    }

    private double added(String text) {
        String same = text.toLowerCase(Locale.ROOT);
        int fold = same.equals(text) ? texts.size() : (int) code(same);
        int code = texts.size();
        codes.put(text, code);
        texts.add(text);
        folded.add(fold);
        return code;
    }

    /**
     * The text of a code.
     *
     * @param code given out by {@link #code}
     * @return the text
     */
    public String text(double code) {
        return texts.get((int) code);
    }

    /**
     * Whether two texts are the same without regard to case.
     *
     * @param left a code
     * @param right a code
     * @return true when they are
     */
    public boolean same(double left, double right) {
        return left == right || folded.get((int) left).equals(folded.get((int) right));
    }

    /**
     * Whether a list of keys, apart by spaces, has a key.
     *
     * @param list a code
     * @param key a code
     * @return true when it has
     */
    public boolean hasKey(double list, double key) {
        String all = " " + text(folded.get((int) list)) + " ";
        return all.contains(" " + text(folded.get((int) key)) + " ");
    }

    /**
     * Texts one after the other, as one text; a text not seen before is given a code.
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
        return text(Double.doubleToRawLongBits(value) & 0x0000_0000_ffff_ffffL);
    }
}
