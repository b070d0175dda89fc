package org.benchmetre.farm.feed;

import java.util.Locale;

/**
 * The ions that a recipe, raw water and acid speak of. Their numbers are data: see {@link IonFacts}. Nitrogen comes as nitrate and as
 * ammonium.
 */
enum Ion {
    /** Nitrogen as nitrate. */
    NITRATE,
    /** Nitrogen as ammonium. */
    AMMONIUM,
    /** Phosphorus. */
    PHOSPHORUS,
    /** Potassium. */
    POTASSIUM,
    /** Calcium. */
    CALCIUM,
    /** Magnesium. */
    MAGNESIUM,
    /** Sulphur, which follows from the salts that are set by other ions. */
    SULPHUR,
    /** Sodium, which only raw water brings. */
    SODIUM,
    /** Chloride, which only raw water brings. */
    CHLORIDE,
    /** Bicarbonate of the raw water that the acid leaves. */
    BICARBONATE;

    /** The ion of a key; throws {@link IllegalArgumentException} for a key of none. */
    static Ion of(String key) {
        return valueOf(key.toUpperCase(Locale.ROOT));
    }

    String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
