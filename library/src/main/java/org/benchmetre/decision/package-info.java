/**
 * Searches over a budget: at which value of an entry two figures meet, and the searches that lines declare. Works on any budget
 * through {@code org.benchmetre.budget.run}; knows no crop, no files and no workbook.
 */
package org.benchmetre.decision;
