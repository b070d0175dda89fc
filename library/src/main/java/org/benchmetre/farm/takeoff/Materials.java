package org.benchmetre.farm.takeoff;

import static org.benchmetre.farm.input.TradeUnits.ITEM;
import static org.benchmetre.farm.input.TradeUnits.ONE;
import static org.benchmetre.farm.input.TradeUnits.PACK;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Blank;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.Meaning;
import org.benchmetre.budget.entry.TextForm;
import org.benchmetre.budget.rule.AtMost;
import org.benchmetre.budget.rule.NotBefore;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Columns;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Groups;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.irrigation.hydraulics.Ways;
import org.benchmetre.scenario.TableForm;

/** The parts table as entered: one row for each part, whatever it is. New systems are new rows. */
public final class Materials {

    /** The file. */
    public static final String FILE = FarmTable.MATERIALS.file();

    private static final Bounds SHARE = new Bounds(0, true, 10, false);
    private static final Bounds RESALE = new Bounds(0, true, 1, false);
    /** The keys of loans, which stand above parts and take what they pay for from here. */
    private static final String LOANS = "loan_key";

    private static final List<String> LIFE_UNITS = List.of("a", "crop");

    /** One row for each part. */
    public final Axis axis;
    /** Labels. */
    public final Line label;
    /** Keys. */
    public final Line key;
    /** Group, a label. */
    public final Line group;
    /** Driver; blank where the row is not in use. */
    public final Line driver;
    /** Units for each unit of the driver, item/driver. */
    public final Line rate;
    /** Waste, share of quantity. */
    public final Line waste;
    /** Unit of the item, a word; blank for that of its driver. */
    public final Line unit;
    /** Whether the quantity is rounded up to whole units: {@code yes} or {@code no}. */
    public final Line whole;
    /** What one unit can carry, in its unit; 0 when unknown. */
    final Line serves;
    /** Unit of what one unit can carry, a word; blank for that of its driver. */
    final Line servesUnit;
    /** Units in a pack, item/pack. */
    public final Line pack;
    /** Price of a pack, money/pack. */
    public final Line price;
    /** Freight, share of price. */
    public final Line freight;
    /** Sales tax, share of price. */
    public final Line salesTax;
    /** Life, in years or crops. */
    public final Line life;
    /** Unit of the life: {@code a} or {@code crop}. */
    public final Line lifeUnit;
    /** Salvage of a pack, money/pack; negative when disposal costs. */
    public final Line salvage;
    /** Share of the cost that is left of a life which a sale at the end of the plan would bring; nothing unless entered. */
    public final Line resale;
    /** Repairs a year, share of cost, 1/a. */
    public final Line repairs;
    /** Hours to install a unit, h/item. */
    public final Line installHours;
    /** Hours to take out a unit, h/item. */
    public final Line removeHours;
    /** Plausible life, low end; 0 when unknown. */
    public final Line lifeLow;
    /** Plausible life, high end; 0 when unknown. */
    public final Line lifeHigh;
    /** Plausible price of a pack, low end, money/pack; 0 when unknown. */
    public final Line priceLow;
    /** Plausible price of a pack, high end, money/pack; 0 when unknown. */
    public final Line priceHigh;
    /** Keys of the ways the part belongs to; blank for all. */
    public final Line option;
    /** Day of the quotation, a date as text; blank when there is none. */
    public final Line quoted;
    /** Last day on which the quotation holds, a date as text; blank when nobody said. */
    public final Line validUntil;
    /** Key of the loan that pays the part; blank for none. */
    public final Line paidBy;
    /** Block of a whole budget it belongs to; blank for none, see {@link PartBlocks}. */
    final Line block;

    /** The groups of parts. */
    public final Groups groups;

    /**
     * Declares the columns.
     *
     * @param b where schedules are added
     * @param drivers what parts are counted by
     * @param ways keys for the options
     */
    public Materials(BudgetBuilder b, Drivers drivers, Ways ways) {
        ScheduleBuilder s = b.shared(Sheets.MATERIALS, Tables.PARTS_BOUGHT);
        s.note("One row a part. Quantity is rate times driver times (1 + waste). A blank driver leaves a row out.");
        Columns c = Columns.of(b, FarmTable.MATERIALS, s);
        axis = c.axis();
        label = c.names("material_label", "Part");
        key = c.keys("material_item", "Key");
        groups = Groups.of(b.structure().keys(TableForm.groupsOf(FILE)).names(), CostGroups.OTHER);
        group = c.groups("group", "material_group", "Group", groups);
        driver = c.choice("driver", "material_driver", "Driver", drivers.names(), null);
        option = c.keyList("option", "material_option", "Irrigation system", ways.key.id());
        block = c.choice("block", "material_block", "Block of a whole budget", PartBlocks.WORDS, "");
        Unit itemPerDriver = ITEM.over(Unit.parse("driver"));
        rate = c.numbers("rate", "material_rate", "Rate", itemPerDriver, Columns.NOT_NEGATIVE, Double.NaN);
        waste = c.numbers("waste", "material_waste", "Waste", ONE, SHARE, 0);
        whole = c.choice("whole", "material_whole", "Whole units", List.of("yes", "no"), "no");
        unit = c.units("unit", "material_unit", "Unit", TextForm.unitOrCount(PartMeasure.ofParts()));
        pack = c.measuredIn(unit).numbers("pack", "material_pack", "Pack size", ITEM.over(PACK), Columns.POSITIVE, 1);
        Unit perPack = Unit.parse("money/pack");
        Meaning asked = Meaning.price("material_price_year", "material_source");
        price = c.prices("price", "material_price", "Price of a pack", perPack, Columns.PRICE_OF_A_PART, asked);
        c.years("price_year", "material_price_year", "Price year", price);
        freight = c.numbers("freight", "material_freight", "Freight, share", ONE, SHARE, 0);
        salesTax = c.numbers("sales_tax", "material_sales_tax", "Sales tax, share", ONE, SHARE, 0);
        c.words("source", "material_source", "Source");
        c.words("supplier", "material_supplier", "Supplier");
        quoted = c.dates("quoted", "material_quoted", "Quoted on");
        validUntil = c.dates("valid_until", "material_valid_until", "Quote valid until");
        paidBy = c.word("paid_by", "material_paid_by", "Paid by loan", TextForm.keyOf(LOANS), Blank.NOTHING);
        Columns l = c.in(b.schedule(Sheets.MATERIALS, "Parts: lives, hours and doubts"));
        life = l.documented("life", "material_life", "Life", ONE, Columns.POSITIVE);
        lifeUnit = l.choice("life_unit", "material_life_unit", "Life in", LIFE_UNITS, "a");
        lifeLow = l.numbers("life_low", "material_life_low", "Life, low", ONE, Columns.NOT_NEGATIVE, 0);
        lifeHigh = l.numbers("life_high", "material_life_high", "Life, high", ONE, Columns.NOT_NEGATIVE, 0);
        salvage = l.numbers("salvage", "material_salvage", "Salvage of a pack", perPack, Bounds.ANY, 0);
        resale = l.numbers("resale", "material_resale", "Resale, share of unexpired cost", ONE, RESALE, 0);
        repairs = l.numbers("repairs", "material_repairs", "Repairs, share of cost", Unit.parse("1/a"), SHARE, 0);
        Unit hours = Unit.parse("h").over(ITEM);
        installHours = l.numbers(
                "install_hours", "material_install_hours", "Hours to install", hours, Columns.NOT_NEGATIVE, 0);
        removeHours =
                l.numbers("remove_hours", "material_remove_hours", "Hours to remove", hours, Columns.NOT_NEGATIVE, 0);
        priceLow = l.numbers("price_low", "material_price_low", "Price, low", perPack, Columns.NOT_NEGATIVE, 0);
        priceHigh = l.numbers("price_high", "material_price_high", "Price, high", perPack, Columns.NOT_NEGATIVE, 0);
        serves = l.numbers("serves", "material_serves", "One unit carries", ONE, Columns.POSITIVE, 0);
        servesUnit = l.units(
                "serves_unit",
                "material_serves_unit",
                "Unit of what it carries",
                TextForm.unitOf(PartMeasure.ofCapacities()));
        b.rule(new AtMost(salvage, price));
        b.rule(new NotBefore(quoted, validUntil));
        b.rule(new UnitFits(unit, driver, rate, drivers.usualUnits()));
        b.rule(new CarriesSomething(serves, servesUnit, driver));
        b.range(price, priceLow, priceHigh);
        UnitPrices.Packs packs = new UnitPrices.Packs(unit, pack, driver, drivers.usualUnits());
        b.range(price, new UnitPrices(packs, UnitPrices.of(c.profile())));
        b.range(life, lifeLow, lifeHigh);
    }
}
