package org.benchmetre.farm.pages;

import static java.util.Map.entry;

import java.util.Map;
import org.benchmetre.budget.Line;

/** Headings of columns whose labels, which stand alone elsewhere, are too long above a narrow column. */
final class ShortHeadings {

    private static final Map<String, String> SHORT = Map.ofEntries(
            entry("material_option", "Irrigation system"),
            entry("material_block", "Block"),
            entry("material_whole", "Whole"),
            entry("material_serves", "Carries"),
            entry("material_serves_unit", "Carries, unit"),
            entry("material_freight", "Freight"),
            entry("material_sales_tax", "Sales tax"),
            entry("material_repairs", "Repairs"),
            entry("material_salvage", "Salvage"),
            entry("material_resale", "Resale"),
            entry("material_quoted", "Quoted"),
            entry("material_valid_until", "Valid until"),
            entry("material_paid_by", "Paid by"),
            entry("way_label", "System"),
            entry("way_lines", "Lines"),
            entry("way_tail", "Tail"),
            entry("way_run_length", "Run length"),
            entry("way_outlet_flow", "Flow"),
            entry("way_outlet_pressure", "Rated pressure"),
            entry("way_flow_exponent", "Exponent"),
            entry("way_pressure_low", "Pressure, low"),
            entry("way_pressure_high", "Pressure, high"),
            entry("way_coefficient_of_variation", "Variation as made"),
            entry("way_outlet_kind", "Kind"),
            entry("way_strip_offset", "Plant to line"),
            entry("way_reach", "Reach"),
            entry("way_inner_diameter", "Inner diameter"),
            entry("way_connection_loss", "Barb loss"),
            entry("way_feed_point", "Fed at"),
            entry("way_first_outlet", "First outlet"),
            entry("way_share_caught", "Caught"),
            entry("way_outlet_passage", "Passage"),
            entry("way_outlet_item", "Outlet part"),
            entry("way_failed_per_year", "Failing"),
            entry("way_failed_low", "Failing, low"),
            entry("way_failed_high", "Failing, high"),
            entry("way_common_cause", "Common cause"),
            entry("way_repair", "Repair"),
            entry("way_outlet_replace_cost", "New outlet"),
            entry("stock_freight", "Freight"),
            entry("stock_losses", "Lost"),
            entry("stock_culls", "Culled"),
            entry("stock_replacement", "Replaced"),
            entry("stock_weeks_to_fruit", "To first fruit"),
            entry("stock_heat_sum", "Heat sum"),
            entry("stock_heat_base", "Heat above"),
            entry("stock_yield_entered", "Yield factor"),
            entry("stock_second_crop", "Yield, second turn"),
            entry("stock_later_crops", "Yield, later turns"),
            entry("stock_stands_weeks", "Stands"),
            entry("stock_raising_weeks", "Raised"),
            entry("break_stock", "Plant stock"),
            entry("break_from", "From"),
            entry("channel_most", "Most it takes"),
            entry("channel_second_price", "Second grade"),
            entry("channel_commission", "Commission"),
            entry("task_pattern", "Spread"),
            entry("heated_share", "Heated"),
            entry("month_need_per_plant", "Water kept"),
            entry("month_crop_share", "In crop"),
            entry("pick_passes", "Passes"));

    private ShortHeadings() {}

    /** The short heading of a line, or its label. */
    static String of(Line line) {
        return SHORT.getOrDefault(line.id(), line.label());
    }

    /** The identifiers that have a short heading. */
    static Iterable<String> known() {
        return SHORT.keySet();
    }
}
