package org.benchmetre.farm;

import org.benchmetre.budget.BudgetBuilder;

/** The cautions that stand beside the figures. They defer to local codes and licensed practice. */
final class Cautions {

    private Cautions() {}

    static void add(BudgetBuilder b) {
        b.caution(
                "Loads",
                "Wet troughs, crop and people load a frame. Have a licensed engineer confirm benches, hangers and the house "
                        + "before anything is hung or stacked.");
        b.caution(
                "Water pressure and backflow",
                "Keep every part within its pressure rating. A line that can carry nutrient solution or acid needs the backflow prevention "
                        + "that the local plumbing code asks for, fitted and tested by those licensed to.");
        b.caution(
                "Acids and fertilisers",
                "Concentrates burn and react. Follow labels and safety data sheets, wear what they ask for, add acid to water, "
                        + "and keep stock solutions apart. Collect drain water as local rules require. Drain that is reused carries "
                        + "disease and salt: have it treated and tested.");
        b.caution(
                "Acid against clogging",
                "Acid put into lines needs the backflow prevention that local rules ask for. Never let acid meet bleach or any "
                        + "chlorine product: the gas kills. Follow the label, rinse lines between the two, keep people out "
                        + "while it runs, and leave it to those trained and, where asked for, licensed to.");
        b.caution(
                "Electricity near water",
                "Pumps, controllers and lights near water are work for a licensed electrician under the local code.");
        b.caution(
                "Heaters and fuel",
                "A heater needs air to burn and a vent to the outside: carbon monoxide kills without a smell. Gas, oil, boiler "
                        + "and electrical work, fuel storage and alarms follow the local code and are for those licensed to. The "
                        + "boiler size here is a first figure, not a design.");
        b.caution(
                "Plant protection",
                "Only products registered for the crop and place may be used, as their labels say.");
        b.caution(
                "Money",
                "First cost is what it takes to build, not what it takes to run. Prices carry their year and their source; an "
                        + "invented or unsourced figure is to be replaced by a quotation before money is spent or lent. This is "
                        + "arithmetic on the entries shown, not financial advice.");
    }
}
