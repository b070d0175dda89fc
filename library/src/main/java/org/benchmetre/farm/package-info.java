/**
 * The trade, put together: reads a scenario's tables and lets each section declare its entries and lines. Nothing here evaluates
 * anything.
 */
package org.benchmetre.farm;
