/**
 * Computing a budget: the graph unrolled to cells, folded where nothing varies, sorted once, and run for one case or for blocks of
 * cases. Reads {@code org.benchmetre.budget}; nothing there reads this.
 */
package org.benchmetre.budget.run;
