package org.benchmetre.workbook;

import org.apache.poi.ss.usermodel.PrintSetup;

/** Paper that is printed on. */
public enum Paper {
    /** ISO 216: 210 by 297 mm. */
    A4(PrintSetup.A4_PAPERSIZE, 595, 842),
    /** ANSI/ASME Y14.1: 8.5 by 11 inches. */
    LETTER(PrintSetup.LETTER_PAPERSIZE, 612, 792);

    static final double SIDE_INCHES = 0.35;
    static final double FOOT_INCHES = 0.5;
    private static final double POINTS_OF_AN_INCH = 72;

    private final short code;
    private final double height;
    private final double width;

    Paper(short code, double height, double width) {
        this.code = code;
        this.height = height;
        this.width = width;
    }

    /** Points between the margins from left to right, on its side. */
    double printedWidth() {
        return width - POINTS_OF_AN_INCH * 2 * SIDE_INCHES;
    }

    /** Points between the margins from top to bottom, on its side. */
    double printedHeight() {
        return height - POINTS_OF_AN_INCH * (SIDE_INCHES + FOOT_INCHES);
    }

    short code() {
        return code;
    }
}
