/**
 * What it takes to own and what is left: capital recovery over each life, repairs, insurance, property tax, overhead, interest on
 * operating capital, and the enterprise budget with its break-evens.
 */
package org.benchmetre.farm.ownership;
