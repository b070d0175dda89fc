/**
 * The open list of ways to water: outlets and friction along a line, water stored in it, clogging and dry plants, care; and the water
 * of the house: what plants keep, what is given and drains, zones, pump, run time and money.
 */
package org.benchmetre.farm.irrigation;
