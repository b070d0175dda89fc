/** What each reader of a farm sees: pages over its lines, for workbook and console. Pages are data; a class each. No figure is made here. */
package org.benchmetre.farm.pages;
