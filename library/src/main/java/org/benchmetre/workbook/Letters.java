package org.benchmetre.workbook;

import java.util.regex.Pattern;

/**
 * How wide words are, in letters of the width of a digit, and how many lines they take. Widths are those of Helvetica in three sizes
 * (Adobe Core 14 font metrics, rounded), which Arial and its kin share.
 */
final class Letters {

    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final String NARROW = "ijltfIJr.,:;'|!()[]-/ ·";
    private static final String WIDE = "mwMWQOG%@–—";
    private static final double NARROW_WIDTH = 0.55;
    private static final double WIDE_WIDTH = 1.45;
    private static final double CAPITAL_WIDTH = 1.2;
    private static final double USUAL_WIDTH = 0.96;

    private Letters() {}

    static double width(String text) {
        return text.chars().mapToDouble(Letters::width).sum();
    }

    private static double width(int letter) {
        if (NARROW.indexOf(letter) >= 0) {
            return NARROW_WIDTH;
        }
        if (WIDE.indexOf(letter) >= 0) {
            return WIDE_WIDTH;
        }
        return Character.isUpperCase(letter) || letter > 0x2FF ? CAPITAL_WIDTH : USUAL_WIDTH;
    }

    /** How many lines a text takes in a width when words are kept whole, and those that are longer than a line broken. */
    static int lines(String text, double width) {
        int lines = 1;
        double used = 0;
        double space = width(" ");
        for (String word : SPACES.split(text.trim())) {
            double wide = width(word);
            if (used > 0 && used + space + wide > width) {
                lines++;
                used = 0;
            }
            double needed = used == 0 ? wide : used + space + wide;
            int broken = (int) Math.max(0, Math.ceil(needed / width) - 1);
            lines += broken;
            used = needed - broken * width;
        }
        return lines;
    }
}
