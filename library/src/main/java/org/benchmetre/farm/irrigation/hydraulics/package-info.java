/**
 * The open list of irrigation systems and their hydraulics, bench by bench: outlets in reach of a plant, friction and pressure along a
 * lateral, evenness, water stored between pulses. It knows the house and its plants, not the water they keep nor what anything
 * costs.
 */
package org.benchmetre.farm.irrigation.hydraulics;
