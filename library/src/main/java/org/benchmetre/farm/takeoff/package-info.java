/** Parts and their drivers: quantities, packs, what they cost to build. */
package org.benchmetre.farm.takeoff;
