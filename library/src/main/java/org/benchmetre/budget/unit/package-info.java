/**
 * Units of measurement with exact factors: the trade's metric and customary units, opaque counts (plants, packs, the unit of an
 * item) and two kinds of money that never mix. Depends on nothing of ours.
 */
package org.benchmetre.budget.unit;
