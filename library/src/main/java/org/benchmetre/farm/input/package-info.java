/** Turns rows of scenario files into entries of lines, and says what is wrong with them. */
package org.benchmetre.farm.input;
