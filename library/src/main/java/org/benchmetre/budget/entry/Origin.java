package org.benchmetre.budget.entry;

import java.io.Serializable;

/** Where the value of a cell comes from. Each kind prints as the place that faults and explanations name. */
public sealed interface Origin extends Serializable {

    /** The documented default. */
    Origin DEFAULT = new Default();

    /** A documented default: nobody has said anything else. */
    record Default() implements Origin {
        @Override
        public String toString() {
            return "";
        }
    }

    /**
     * A cell of a file, or of a table that was built in memory.
     *
     * @param file the file's name without its folder
     * @param row the row as a spreadsheet program numbers it, from 1
     * @param column the column's name
     */
    record File(String file, int row, String column) implements Origin {
        @Override
        public String toString() {
            return file + (row == 0 ? "" : ", row " + row) + (column.isEmpty() ? "" : ", column " + column);
        }
    }

    /**
     * A change for this run.
     *
     * @param text the setting as it was written
     */
    record Setting(String text) implements Origin {
        @Override
        public String toString() {
            return "setting " + text;
        }
    }

    /**
     * A cell of a workbook that was read back.
     *
     * @param sheet name of the sheet
     * @param cell address of the cell
     */
    record Sheet(String sheet, String cell) implements Origin {
        @Override
        public String toString() {
            return "sheet " + sheet + ", cell " + cell;
        }
    }

    /**
     * A row of a grid of cases.
     *
     * @param file the grid's file
     * @param row the row as a spreadsheet program numbers it
     */
    record GridRow(String file, int row) implements Origin {
        @Override
        public String toString() {
            return file + ", row " + row;
        }
    }

    /**
     * A figure of another budget.
     *
     * @param budget what that budget is called
     * @param figure which figure, in words or as an address
     */
    record Figure(String budget, String figure) implements Origin {
        @Override
        public String toString() {
            return budget + ", " + figure;
        }
    }

    /** A call from Java that says nothing more. */
    record Call() implements Origin {
        @Override
        public String toString() {
            return "a value given in Java";
        }
    }
}
