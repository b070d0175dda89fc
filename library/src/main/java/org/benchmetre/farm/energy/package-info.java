/** Heat and electricity by month: what the house loses, what the sun gives, what is burnt, how warm it is inside, what runs on electricity. No pumps. */
package org.benchmetre.farm.energy;
