package org.benchmetre.farm.energy;

import org.benchmetre.budget.Line;

/**
 * Heat and electricity of the house, for sections that count or pay them.
 *
 * @param cost both together
 * @param heating heat and fuel
 * @param electricity electricity without pumps
 * @param heaterPower size of the heater for the design night, kW
 */
public record HouseEnergy(EnergyCost cost, Heating heating, Electricity electricity, Line heaterPower) {}
