package org.benchmetre.farm;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.farm.energy.Climate;
import org.benchmetre.farm.energy.DesignNight;
import org.benchmetre.farm.energy.Electricity;
import org.benchmetre.farm.energy.EnergyCost;
import org.benchmetre.farm.energy.Envelope;
import org.benchmetre.farm.energy.Fuel;
import org.benchmetre.farm.energy.HeatLoss;
import org.benchmetre.farm.energy.Heating;
import org.benchmetre.farm.energy.HouseEnergy;
import org.benchmetre.farm.energy.InsideTemperature;
import org.benchmetre.farm.energy.MadeUpByHeat;
import org.benchmetre.farm.energy.SetPoints;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.layout.House;

/** Puts the sections of heat and power together. */
final class EnergyOfHouse {

    private EnergyOfHouse() {}

    static HouseEnergy of(BudgetBuilder b, FarmEntries entries, Months months, House house, Line electricityPrice) {
        Envelope skin = new Envelope(b, entries, house.length, house.width, house.houseArea);
        HeatLoss loss = new HeatLoss(b, entries, skin);
        Climate climate = new Climate(b, entries, months);
        SetPoints set = new SetPoints(b, entries, climate);
        Fuel fuel = new Fuel(b, entries);
        DesignNight night = new DesignNight(b, entries, loss, climate, fuel);
        MadeUpByHeat made = new MadeUpByHeat(b, entries, loss, climate, set, house.houseArea);
        InsideTemperature inside = new InsideTemperature(b, entries, made);
        Heating heating = new Heating(b, entries.profile(), loss, made, fuel, house.houseArea);
        Electricity electricity = new Electricity(b, entries, months, house.houseArea, electricityPrice);
        EnergyCost cost = new EnergyCost(b, heating, electricity, house.houseArea);
        return new HouseEnergy(cost, heating, electricity, inside, night.heaterPower);
    }
}
