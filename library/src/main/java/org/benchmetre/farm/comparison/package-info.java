/** Irrigation systems side by side: what each costs a metre and year by cause, the partial budget, and at which values the answer flips. */
package org.benchmetre.farm.comparison;
