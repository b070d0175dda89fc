/** What it takes to own: capital recovery over each life, repairs, insurance, property tax, and what is left of receipts. */
package org.benchmetre.farm.ownership;
