package org.benchmetre.farm.energy;

import org.benchmetre.budget.unit.Unit;

/** The units of heat and electricity. In a difference of temperatures a degree Celsius is a kelvin. */
final class EnergyUnits {

    static final Unit CELSIUS = Unit.parse("degC");
    static final Unit KELVIN = Unit.parse("K");
    static final Unit CUBIC_METRE = Unit.parse("m3");
    static final Unit U_VALUE = Unit.parse("W/(m2 K)");
    static final Unit WATT_PER_KELVIN = Unit.parse("W/K");
    static final Unit WATT_PER_AREA = Unit.parse("W/m2");
    static final Unit KILOWATT = Unit.parse("kW");
    static final Unit HOURS_A_DAY = Unit.parse("h/d");
    static final Unit ENERGY_A_MONTH = Unit.parse("kWh/mo");
    static final Unit ENERGY_A_YEAR = Unit.parse("kWh/a");
    static final Unit MONEY_A_MONTH = Unit.parse("money/mo");
    static final Unit MONEY_A_YEAR = Unit.parse("money/a");

    private EnergyUnits() {}
}
