package org.benchmetre.workbook;

import org.apache.poi.ooxml.POIXMLDocumentPart;
import org.apache.poi.ooxml.POIXMLRelation;
import org.apache.poi.xssf.usermodel.XSSFFactory;
import org.apache.poi.xssf.usermodel.XSSFRelation;

/**
 * Makes the parts of one new workbook: sheets and texts of ours, which hold plain values instead of an object of the library and one
 * of its markup for every cell. {@code WritingBenchmark} measures the difference.
 */
final class GridParts extends XSSFFactory {

    private final SharedTexts texts = new SharedTexts();

    @Override
    public POIXMLDocumentPart newDocumentPart(POIXMLRelation kind) {
        if (kind == XSSFRelation.WORKSHEET) {
            return new GridSheet(texts);
        }
        return kind == XSSFRelation.SHARED_STRINGS ? texts : super.newDocumentPart(kind);
    }
}
