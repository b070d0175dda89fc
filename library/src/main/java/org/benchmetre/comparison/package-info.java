/**
 * Scenarios held against each other as a budget of its own: the figures of each are entries, differences and their causes are lines.
 * Takes finished figures and reads no files; knows of a scenario no more than the names of the lines it takes over.
 */
package org.benchmetre.comparison;
