/**
 * The front door: reads a scenario folder into a computed budget, with price lists and single changes laid over it. What an
 * embedding developer needs beside {@code org.benchmetre.budget}, and nothing about consoles or spreadsheets.
 */
package org.benchmetre;
