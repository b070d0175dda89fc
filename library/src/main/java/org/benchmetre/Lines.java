package org.benchmetre;

/** Names of lines that the front door itself refers to. */
final class Lines {

    static final String MATERIAL_PRICE = "material_price";
    static final String MATERIAL_PACK = "material_pack";
    static final String MATERIAL_PRICE_YEAR = "material_price_year";
    static final String MATERIAL_SOURCE = "material_source";
    static final String MATERIAL_UNIT = "material_unit";
    static final String MATERIAL_OPTION = "material_option";
    static final String WAY_KEY = "way_key";
    static final String PLAN_YEAR = "plan_year";

    private Lines() {}
}
