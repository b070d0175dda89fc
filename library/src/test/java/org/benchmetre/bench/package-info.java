/**
 * Benchmarks, outside the tests: blocks of cases and single cases against the same arithmetic written by hand and against a
 * spreadsheet evaluator, and the written workbook against the spreadsheet library's own calls. {@code mvn -B -ntp -pl library test-compile exec:exec@bench} runs them all and prints their ratios.
 */
package org.benchmetre.bench;
