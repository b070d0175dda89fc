/** Rules between cells of entries, which every gate keeps. They know no crop. */
package org.benchmetre.budget.rule;
