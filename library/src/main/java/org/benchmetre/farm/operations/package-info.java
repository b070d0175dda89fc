/** Work and what is used up by it: tasks, picking and packing, wages, hours by month and the people they need. */
package org.benchmetre.farm.operations;
