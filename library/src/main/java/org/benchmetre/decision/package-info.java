/**
 * Searches over a budget: at which value of an entry two figures meet. Works on any budget through {@code org.benchmetre.budget.run};
 * knows no crop, no files and no workbook. What it finds may be put into solved lines by {@code Budget.filled}.
 */
package org.benchmetre.decision;
