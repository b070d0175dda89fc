package org.benchmetre.workbook;

import org.apache.poi.ss.usermodel.PrintSetup;

/** Paper that is printed on. */
public enum Paper {
    /** ISO 216: 210 by 297 mm. */
    A4(PrintSetup.A4_PAPERSIZE, 595),
    /** ANSI/ASME Y14.1: 8.5 by 11 inches. */
    LETTER(PrintSetup.LETTER_PAPERSIZE, 612);

    private final short code;
    private final double shortPoints;

    Paper(short code, double shortPoints) {
        this.code = code;
        this.shortPoints = shortPoints;
    }

    /** Its shorter side. */
    double shortPoints() {
        return shortPoints;
    }

    short code() {
        return code;
    }
}
