package org.benchmetre.farm.energy;

/**
 * Heat and electricity of the house, for sections that count or pay them.
 *
 * @param cost both together
 * @param heating heat and fuel
 * @param electricity electricity without pumps
 */
public record HouseEnergy(EnergyCost cost, Heating heating, Electricity electricity) {}
