package org.benchmetre.budget;

/**
 * The one table of operators and functions: what each takes, what it does in Java, how a spreadsheet spells it. Only what Office
 * Open XML (ECMA-376 part 1, 18.17.7) and OpenFormula (ISO/IEC 26300-2) define with the same meaning is here; POI's evaluator and
 * LibreOffice evaluate all of it. The kernels for blocks of cases repeat each body over arrays, and a test compares their bits.
 */
public enum Function {
    /** Sum. */
    ADD(2, Typing::alike, Spelling.infix("+", Spelling.ADD), (a, texts) -> a[0] + a[1]),
    /** Difference. */
    SUBTRACT(2, Typing::alike, Spelling.infix("-", Spelling.ADD), (a, texts) -> a[0] - a[1]),
    /** Product. */
    MULTIPLY(2, Typing::product, Spelling.infix("*", Spelling.MULTIPLY), (a, texts) -> a[0] * a[1]),
    /** Quotient; a divisor of zero gives no finite number and is reported with its cause. */
    DIVIDE(2, Typing::quotient, Spelling.infix("/", Spelling.MULTIPLY), (a, texts) -> a[0] / a[1]),
    /** Power of a base that is not negative. */
    POWER(2, Typing::power, Spelling.power(), (a, texts) -> Math.pow(a[0], a[1])),
    /** The lesser of two. */
    MIN(2, Typing::alike, Spelling.call("MIN"), (a, texts) -> Math.min(a[0], a[1])),
    /** The greater of two. */
    MAX(2, Typing::alike, Spelling.call("MAX"), (a, texts) -> Math.max(a[0], a[1])),
    /** Natural exponential of a plain number. */
    EXP(1, Typing::plain, Spelling.call("EXP"), (a, texts) -> Math.exp(a[0])),
    /** Natural logarithm of a plain number above zero. */
    LN(1, Typing::plain, Spelling.call("LN"), (a, texts) -> Math.log(a[0])),
    /** Rounded up, away from zero, after rounding to six decimals. */
    WHOLE_UP(1, Typing::alike, Spelling.roundedFirst("ROUNDUP(", ",0)"), (a, texts) -> Rounding.wholeUp(a[0])),
    /** Rounded down, towards minus infinity, after rounding to six decimals. */
    WHOLE_DOWN(1, Typing::alike, Spelling.roundedFirst("INT(", ")"), (a, texts) -> Rounding.wholeDown(a[0])),
    /**
     * Yearly amount that recovers a cost over its life with interest, less what its salvage is worth then. Arguments: rate a year,
     * life in years, cost, salvage. A rate under a ten-millionth counts as zero, where the formula itself would divide by zero.
     */
    RECOVERY(4, Typing::recovery, Spelling.recovery(), (a, texts) -> Interest.recovery(a[0], a[1], a[2], a[3])),
    /** Above zero. */
    POSITIVE(1, Typing::compared, Spelling.comparedWith(">0"), (a, texts) -> truth(a[0] > 0)),
    /** More by more than a millionth. */
    EXCEEDS(2, Typing::compared, Spelling.differenceAboveZero(), (a, texts) -> truth(Rounding.exceeds(a[0], a[1]))),
    /** The same text, without regard to case. */
    SAME_TEXT(2, Typing::texts, Spelling.infix("=", Spelling.COMPARE), (a, texts) -> truth(texts.same(a[0], a[1]))),
    /** A text that is not empty. */
    FILLED(1, Typing::texts, Spelling.comparedWith("<>\"\""), (a, texts) -> truth(a[0] != 0)),
    /** A list of keys, apart by spaces, that has a key. */
    HAS_KEY(2, Typing::texts, Spelling.hasKey(), (a, texts) -> truth(texts.hasKey(a[0], a[1]))),
    /** Texts one after the other, as one text. */
    JOIN(-1, Typing::joined, Spelling.joined(), (a, texts) -> texts.joined(a)),
    /** One of two alternatives; the other is not evaluated. */
    IF(3, Typing::branch, Spelling.call("IF"), (a, texts) -> a[0] != 0 ? a[1] : a[2]),
    /** A number, or the reason why there is none. */
    ONLY_IF(3, Typing::onlyIf, Spelling.call("IF"), (a, texts) -> a[0] != 0 ? a[1] : Texts.noNumber(a[2])),
    /** An optional number that has a value. */
    HAS_NUMBER(1, Typing::optional, Spelling.call("ISNUMBER"), (a, texts) -> truth(!Double.isNaN(a[0]))),
    /** The value of an optional number, or another number where it has none. */
    NUMBER_OR(2, Typing::numberOr, Spelling.numberOr(), (a, texts) -> Double.isNaN(a[0]) ? a[1] : a[0]),
    /** All hold. */
    AND(-1, Typing::truths, Spelling.call("AND"), (a, texts) -> all(a)),
    /** Any holds. */
    OR(-1, Typing::truths, Spelling.call("OR"), (a, texts) -> any(a)),
    /** Does not hold. */
    NOT(1, Typing::truths, Spelling.call("NOT"), (a, texts) -> truth(a[0] == 0));

    /** The Java body of a function for one case. */
    @FunctionalInterface
    public interface Body {
        /**
         * Computes one value.
         *
         * @param arguments numbers, truths as 1 or 0, texts as codes
         * @param texts what the codes stand for
         * @return the value
         */
        double of(double[] arguments, Texts texts);
    }

    private final int arity;
    private final transient Typing typing;
    private final transient Spelling spelling;
    private final transient Body body;

    Function(int arity, Typing typing, Spelling spelling, Body body) {
        this.arity = arity;
        this.typing = typing;
        this.spelling = spelling;
        this.body = body;
    }

    /**
     * How many arguments it takes.
     *
     * @return the number, or -1 for any
     */
    public int arity() {
        return arity;
    }

    /**
     * What it computes for one case.
     *
     * @return the body
     */
    public Body body() {
        return body;
    }

    Typing typing() {
        return typing;
    }

    Spelling spelling() {
        return spelling;
    }

    private static double truth(boolean holds) {
        return holds ? 1.0 : 0.0;
    }

    private static double all(double[] truths) {
        for (double truth : truths) {
            if (truth == 0) {
                return 0;
            }
        }
        return 1;
    }

    private static double any(double[] truths) {
        for (double truth : truths) {
            if (truth != 0) {
                return 1;
            }
        }
        return 0;
    }
}
