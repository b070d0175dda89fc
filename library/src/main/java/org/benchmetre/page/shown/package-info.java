/** What the cells of a page show: digits, units, order and what is folded away. One rule for whoever draws pages. */
package org.benchmetre.page.shown;
