/** Parts and their drivers: quantities, packs, what they cost to build, group by group. */
package org.benchmetre.farm.takeoff;
