/**
 * What an entry's cell may hold and the only way in: where files keep it, its bounds and words, what a blank means, what was typed,
 * what was accepted and where it came from. Knows no line, no file, no crop.
 */
package org.benchmetre.budget.entry;
