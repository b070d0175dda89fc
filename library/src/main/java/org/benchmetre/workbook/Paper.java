package org.benchmetre.workbook;

import org.apache.poi.ss.usermodel.PrintSetup;

/** Paper that is printed on. */
public enum Paper {
    /** ISO 216: 210 by 297 mm. */
    A4(PrintSetup.A4_PAPERSIZE),
    /** ANSI/ASME Y14.1: 8.5 by 11 inches. */
    LETTER(PrintSetup.LETTER_PAPERSIZE);

    private final short code;

    Paper(short code) {
        this.code = code;
    }

    short code() {
        return code;
    }
}
