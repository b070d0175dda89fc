package org.benchmetre.workbook;

import org.benchmetre.budget.Schedule;

/**
 * A schedule with its place on a sheet.
 *
 * @param schedule the schedule
 * @param top row of its heading, from 0
 * @param table first row of the table under heading and note
 * @param end first row below the table
 */
record Box(Schedule schedule, int top, int table, int end) {}
