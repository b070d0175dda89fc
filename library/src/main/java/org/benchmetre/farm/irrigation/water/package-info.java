/**
 * The water of the house, by irrigation system and month: what plants keep, what is given and drains, zones, header, pump, hours and
 * money. Flow, pressure and evenness come from the hydraulics of a bench; of outlets that clog it knows nothing.
 */
package org.benchmetre.farm.irrigation.water;
