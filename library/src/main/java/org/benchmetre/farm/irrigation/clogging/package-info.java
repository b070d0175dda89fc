/**
 * Clogging: what the raw water and the filter let through, outlets that fail, plants that fall dry, the fruit lost with them, and the
 * care that keeps outlets open. It may use the hydraulics of a bench and the water of the house; neither uses it.
 */
package org.benchmetre.farm.irrigation.clogging;
