/**
 * Reading and checking the input files of a scenario: folders, comma-separated tables, rows, typed cells, and every
 * fault in them by file, row and column.
 *
 * <p>What lives here knows text and numbers. It knows no crop: the trade sections ask for typed cells by column name,
 * and so declare which columns exist. Wrong input never throws; it is collected in {@link
 * org.benchmetre.scenario.Faults}, one fault hiding no other. Depends on {@code org.benchmetre.budget} and
 * {@code org.benchmetre.files}, and on nothing else of ours.
 */
package org.benchmetre.scenario;
