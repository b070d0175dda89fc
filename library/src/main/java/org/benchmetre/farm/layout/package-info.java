/** House and benches, trough section or containers, substrate, planting. */
package org.benchmetre.farm.layout;
