/** Money over the years of the plan: cash, replacements, residual value, and what the whole is worth today. */
package org.benchmetre.farm.finance;
