/**
 * The whole at a glance: what a whole budget holds and what of it is left out, the accounts of a year for each measure, where the money
 * of a metre goes, and the sentences that say so. It adds up what other sections own and prices nothing itself.
 */
package org.benchmetre.farm.whole;
