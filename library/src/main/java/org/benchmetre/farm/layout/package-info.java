/** House and benches, trough section and substrate, planting. */
package org.benchmetre.farm.layout;
