package org.benchmetre.budget;

/**
 * The one table of operators and functions. A row says all there is to say: how many arguments, their units and kinds and those of
 * the result, the spelling with how tightly it binds, the body for one case and the kernel for a block of cases, which repeats the
 * body over arrays (a test compares their bits). Only what Office Open XML (ECMA-376 part 1, 18.17.7) and OpenFormula (ISO/IEC
 * 26300-2) define with the same meaning is here; POI's evaluator and LibreOffice evaluate all of it.
 */
public enum Function {
    /** Sum. */
    ADD(2, Typing::alike, Spelling.infix("+", Spelling.ADD), (a, texts) -> a[0] + a[1], Kernels::add),
    /** Difference. */
    SUBTRACT(2, Typing::alike, Spelling.infix("-", Spelling.ADD), (a, texts) -> a[0] - a[1], Kernels::subtract),
    /** Product. */
    MULTIPLY(2, Typing::product, Spelling.infix("*", Spelling.MULTIPLY), (a, texts) -> a[0] * a[1], Kernels::multiply),
    /** Quotient; a divisor of zero gives no finite number and is reported with its cause. */
    DIVIDE(2, Typing::quotient, Spelling.infix("/", Spelling.MULTIPLY), (a, texts) -> a[0] / a[1], Kernels::divide),
    /** Power of a base that is not negative. */
    POWER(2, Typing::power, Spelling.power(), (a, texts) -> Math.pow(a[0], a[1]), Kernels::power),
    /** The lesser of two. */
    MIN(2, Typing::alike, Spelling.call("MIN"), (a, texts) -> Math.min(a[0], a[1]), Kernels::min),
    /** The greater of two. */
    MAX(2, Typing::alike, Spelling.call("MAX"), (a, texts) -> Math.max(a[0], a[1]), Kernels::max),
    /** Natural exponential of a plain number. */
    EXP(1, Typing::plain, Spelling.call("EXP"), (a, texts) -> Math.exp(a[0]), Kernels::exp),
    /** Natural logarithm of a plain number above zero. */
    LN(1, Typing::plain, Spelling.call("LN"), (a, texts) -> Math.log(a[0]), Kernels::log),
    /** Rounded up, away from zero, after rounding to six decimals. */
    WHOLE_UP(
            1,
            Typing::alike,
            Spelling.roundedFirst("ROUNDUP(", ",0)"),
            (a, texts) -> Rounding.wholeUp(a[0]),
            Kernels::wholeUp),
    /** Rounded down, towards minus infinity, after rounding to six decimals. */
    WHOLE_DOWN(
            1,
            Typing::alike,
            Spelling.roundedFirst("INT(", ")"),
            (a, texts) -> Rounding.wholeDown(a[0]),
            Kernels::wholeDown),
    /**
     * Yearly amount that recovers a cost over its life with interest, less what its salvage is worth then. Arguments: rate a year,
     * life in years, cost, salvage. A rate under a ten-millionth counts as zero, where the formula itself would divide by zero.
     */
    RECOVERY(
            4,
            Typing::recovery,
            Spelling.recovery(),
            (a, texts) -> Interest.recovery(a[0], a[1], a[2], a[3]),
            Kernels::recovery),
    /** Above zero. */
    POSITIVE(1, Typing::compared, Spelling.comparedWith(">0"), (a, texts) -> truth(a[0] > 0), Kernels::positive),
    /** More by more than a millionth. */
    EXCEEDS(
            2,
            Typing::compared,
            Spelling.differenceAboveZero(),
            (a, texts) -> truth(Rounding.exceeds(a[0], a[1])),
            Kernels::exceeds),
    /** The same text, without regard to case. */
    SAME_TEXT(
            2,
            Typing::texts,
            Spelling.infix("=", Spelling.COMPARE),
            (a, texts) -> truth(texts.same(a[0], a[1])),
            Kernels::sameText),
    /** A text that sorts before another, such as an earlier date: texts of digits and hyphens, which sort alike everywhere. */
    BEFORE(2, Typing::texts, Spelling.infix("<", Spelling.COMPARE), (a, texts) -> truth(texts.before(a[0], a[1]))),
    /** A text that is not empty. */
    FILLED(1, Typing::texts, Spelling.comparedWith("<>\"\""), (a, texts) -> truth(a[0] != 0), Kernels::filled),
    /** A list of keys, apart by spaces, that has a key. */
    HAS_KEY(2, Typing::texts, Spelling.hasKey(), (a, texts) -> truth(texts.hasKey(a[0], a[1])), Kernels::hasKey),
    /** Texts one after the other, as one text. */
    JOIN(-1, Typing::joined, Spelling.joined(), (a, texts) -> texts.joined(a)),
    /** A number as people read it, with so many decimals and commas between thousands. */
    SHOWN(2, Typing::shown, Spelling.shown(), (a, texts) -> texts.shown(a[0], a[1])),
    /** One of two alternatives; the other is not evaluated. */
    IF(3, Typing::branch, Spelling.call("IF"), (a, texts) -> a[0] != 0 ? a[1] : a[2], Kernels::choose),
    /** A number, or the reason why there is none. */
    ONLY_IF(
            3,
            Typing::onlyIf,
            Spelling.call("IF"),
            (a, texts) -> a[0] != 0 ? a[1] : Texts.noNumber(a[2]),
            Kernels::onlyIf),
    /** An optional number that has a value. */
    HAS_NUMBER(
            1,
            Typing::optional,
            Spelling.call("ISNUMBER"),
            (a, texts) -> truth(!Double.isNaN(a[0])),
            Kernels::hasNumber),
    /** The value of an optional number, or another number where it has none. */
    NUMBER_OR(
            2,
            Typing::numberOr,
            Spelling.numberOr(),
            (a, texts) -> Double.isNaN(a[0]) ? a[1] : a[0],
            Kernels::numberOr),
    /** All hold. */
    AND(-1, Typing::truths, Spelling.call("AND"), (a, texts) -> all(a), Kernels::and),
    /** Any holds. */
    OR(-1, Typing::truths, Spelling.call("OR"), (a, texts) -> any(a), Kernels::or),
    /** Does not hold. */
    NOT(1, Typing::truths, Spelling.call("NOT"), (a, texts) -> truth(a[0] == 0), Kernels::not),
    /** Sum of any number of terms, from the first to the last. */
    SUM(-1, Typing::alike, Spelling.call("SUM"), (a, texts) -> sum(a), Kernels::sum),
    /** Sum of the products of neighbours, two and two. */
    SUM_PRODUCT((a, texts) -> sumProduct(a), Kernels::sumProduct),
    /** Sum of the terms whose truth, which stands before each, holds. */
    SUM_WHERE((a, texts) -> sumWhere(a), Kernels::sumWhere),
    /** The rate at which flows, the first of them at once, have no present value. */
    RATE_OF_RETURN((a, texts) -> Interest.rateOfReturn(a));

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
    private final transient Kernel kernel;

    Function(int arity, Typing typing, Spelling spelling, Body body, Kernel kernel) {
        this.arity = arity;
        this.typing = typing;
        this.spelling = spelling;
        this.body = body;
        this.kernel = kernel;
    }

    /** What has no loop of its own: texts are made, or rates searched, one case after the other. */
    Function(int arity, Typing typing, Spelling spelling, Body body) {
        this(arity, typing, spelling, body, Kernel.oneByOne(body));
    }

    /** What only a fold writes, since a spreadsheet spells it over ranges. */
    Function(Body body, Kernel kernel) {
        this(-1, Typing::inFoldsOnly, Spelling.call("SUM"), body, kernel);
    }

    Function(Body body) {
        this(body, Kernel.oneByOne(body));
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

    /**
     * What it computes for a block of cases.
     *
     * @return the kernel
     */
    public Kernel kernel() {
        return kernel;
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

    private static double sum(double[] terms) {
        double sum = 0;
        for (double term : terms) {
            sum += term;
        }
        return sum;
    }

    private static double sumProduct(double[] pairs) {
        double sum = 0;
        for (int i = 0; i < pairs.length; i += 2) {
            sum += pairs[i] * pairs[i + 1];
        }
        return sum;
    }

    private static double sumWhere(double[] pairs) {
        double sum = 0;
        for (int i = 0; i < pairs.length; i += 2) {
            sum += pairs[i] != 0 ? pairs[i + 1] : 0;
        }
        return sum;
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
