/** What a lender looks at: uses and sources of funds, cash with loans, statements, ratios, returns, and what breaks first. */
package org.benchmetre.farm.lending;
