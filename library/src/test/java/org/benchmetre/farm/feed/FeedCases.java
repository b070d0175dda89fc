package org.benchmetre.farm.feed;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.Sample;

/** Seeded recipes and raw waters, most of which no salts can meet. */
final class FeedCases {

    /** How many seeds the laws are held against. */
    static final int COUNT = 60;

    private static final Budget SAMPLE = Sample.troughHouse();
    private static final Map<Long, Figures> MADE = new ConcurrentHashMap<>();

    private FeedCases() {}

    static Figures figures(long seed) {
        return MADE.computeIfAbsent(seed, FeedCases::make);
    }

    private static Figures make(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<String> settings = new ArrayList<>();
        add(settings, random, 20, "recipe_nitrogen");
        add(settings, random, 12, "recipe_potassium");
        add(settings, random, 6, "recipe_calcium", "recipe_sulphur", "raw_water_alkalinity");
        add(settings, random, 4, "recipe_phosphorus", "recipe_magnesium", "raw_water_calcium");
        add(settings, random, 2, "raw_water_magnesium", "raw_water_sulphur", "raw_water_sodium", "raw_water_chloride");
        add(settings, random, 1, "alkalinity_left");
        settings.add("recipe_ammonium_share=" + 0.4 * random.nextDouble() + " 1");
        settings.add("stock_dilution=" + (10 + 290 * random.nextDouble()) + " 1");
        settings.add(
                "acid_choice=" + List.of("nitric", "phosphoric", "sulphuric").get(random.nextInt(3)));
        settings.add("calcium_nitrate_choice="
                + List.of("tetrahydrate", "double_salt").get(random.nextInt(2)));
        settings.add(
                "ammonium_nitrate_choice=" + List.of("nitrate", "phosphate").get(random.nextInt(2)));
        return Figures.of(Sample.with(SAMPLE, settings.toArray(String[]::new)));
    }

    private static void add(List<String> settings, SplittableRandom random, double most, String... lines) {
        for (String line : lines) {
            settings.add(line + "=" + String.format(Locale.ROOT, "%.3f mmol/L", most * random.nextDouble()));
        }
    }
}
