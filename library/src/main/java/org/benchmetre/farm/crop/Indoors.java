package org.benchmetre.farm.crop;

import org.benchmetre.budget.Line;

/**
 * How warm it is where the crop stands, by month.
 *
 * @param night mean of the dark hours, degC; a text where there is no climate
 * @param mean mean of day and night, degC; a text where there is no climate
 * @param unknown months without a climate, a count
 */
public record Indoors(Line night, Line mean, Line unknown) {}
