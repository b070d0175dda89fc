package org.benchmetre.farm.energy;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.energy.EnergyUnits.CUBIC_METRE;
import static org.benchmetre.farm.input.TradeUnits.METRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;
import static org.benchmetre.farm.input.TradeUnits.SQUARE_METRE;

import java.util.List;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * The skin of the house: areas of roof, sides, ends and anything else, and the air inside. Either measured, or those of a house of
 * equal gabled spans on the given floor.
 *
 * <pre>
 * k = (1 + p^2)^0.5     r = p W / (2 n)     F = W (e + r / 2)
 * roof  L W k     sides  2 L e     ends  2 F     air  L F
 * L, W  length and width, m     e  height of the side walls, m     n  spans side by side     p  pitch, rise over run
 * k  slope over its ground      r  height of a gable, m            F  front, m2
 * </pre>
 *
 * Plain geometry; a curved roof is measured.
 */
public final class Envelope {

    private static final String FROM_HOUSE = "from_house";
    private static final String MEASURED = "measured";
    private static final String GABLED = "plain geometry of a house of equal gabled spans";

    /** One row for each kind of surface. */
    public final Axis axis = Axis.rows("surface", "Surface", List.of("roof", "sides", "ends", "other"), 0);
    /** Area of each surface, m2. */
    public final Line area;
    /** Air inside, m3. */
    public final Line volume;

    /** The table of surfaces, for covers and losses. */
    final ScheduleBuilder table;

    private final FarmEntries entries;
    private final ScheduleBuilder entered;
    private final Line rule;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param length of the house
     * @param width of the house
     * @param floor of the house
     */
    public Envelope(BudgetBuilder b, FarmEntries entries, Line length, Line width, Line floor) {
        this.entries = entries;
        entered = b.schedule(Sheets.OPERATIONS, "Skin of the house: size");
        entered.note(
                "Areas follow from the floor, or are measured. Heat lost to the ground along the edges is not counted; enter it "
                        + "as another surface.");
        rule = entries.add(
                entered.textEntry("envelope_areas", "Areas of the house").oneOf(List.of(FROM_HOUSE, MEASURED)));
        Line eave = entries.add(
                entered.entry("eave_height", "Height of the side walls", METRE).from(0, 20));
        Line pitch = entries.add(entered.entry("roof_pitch", "Pitch of the roof, rise over run", ONE)
                .from(0, 3));
        Line spans = entries.add(entered.entry("span_count", "Spans side by side", ONE)
                .from(1, 200)
                .whole());
        Line rise = entered.line(
                "roof_rise",
                "Height of a gable above the side walls",
                METRE,
                pitch.times(width).over(number(2, ONE).times(spans)),
                GABLED);
        Line slope = entered.line(
                "roof_slope",
                "Slope of the roof over its ground",
                ONE,
                one().plus(pitch.power(number(2, ONE))).power(number(0.5, ONE)),
                GABLED);
        Formula two = number(2, ONE);
        Line front = entered.line(
                "end_front", "One end of the house", SQUARE_METRE, width.times(eave.plus(rise.over(two))), GABLED);
        Formula roof = choose("roof_area", "Roof", SQUARE_METRE, floor.times(slope));
        Formula sides = choose(
                "side_area", "Side walls", SQUARE_METRE, two.times(length).times(eave));
        Formula ends = choose("end_area", "End walls", SQUARE_METRE, two.times(front));
        Line other = measure("other_area", "Any other surface", SQUARE_METRE);
        volume = entered.line(
                "house_volume",
                "Air in the house",
                CUBIC_METRE,
                choose("air_volume", "Air in the house", CUBIC_METRE, length.times(front)));

        table = b.schedule(Sheets.OPERATIONS, "Skin of the house: surfaces");
        b.nameRows(axis, table.textLine("surface_label", "Surface", names()));
        area = table.line(
                "surface_area", "Area", SQUARE_METRE, new Rows(axis, List.of(roof, sides, ends, other)), GABLED);
    }

    private Formula choose(String id, String what, Unit unit, Formula fromHouse) {
        Line measured = measure(id, what + ", if measured", unit);
        return when(rule.is(MEASURED), measured, fromHouse);
    }

    private Line measure(String id, String label, Unit unit) {
        return entries.add(entered.entry(id, label, unit).from(0, 10_000_000));
    }

    private Formula names() {
        return new Rows(axis, List.of(text("Roof"), text("Side walls"), text("End walls"), text("Any other")));
    }
}
