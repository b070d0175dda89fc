/** The open list of ways to water. */
package org.benchmetre.farm.irrigation;
