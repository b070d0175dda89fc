package org.benchmetre.farm.energy;

import org.benchmetre.budget.Line;

/**
 * Heat and electricity of the house, for sections that count or pay them, and how warm it is inside.
 *
 * @param cost both together
 * @param heating heat and fuel
 * @param electricity electricity without pumps
 * @param inside temperature in the house
 * @param heaterPower size of the heater for the design night, kW
 */
public record HouseEnergy(
        EnergyCost cost, Heating heating, Electricity electricity, InsideTemperature inside, Line heaterPower) {}
