/**
 * Draws any budget as a live workbook (Office Open XML, ECMA-376): entries to type in, formulas with the engine's values cached in
 * them. Knows lines and schedules and no crop; the only package that sees the spreadsheet library. It computes no figure itself.
 */
package org.benchmetre.workbook;
