/**
 * The graph of lines: what a figure is, what it is made of, in which unit, and how its formula reads in a spreadsheet. Nothing
 * here knows a crop, a file or a spreadsheet library, and nothing here computes: that is {@code org.benchmetre.budget.run}.
 */
package org.benchmetre.budget;
