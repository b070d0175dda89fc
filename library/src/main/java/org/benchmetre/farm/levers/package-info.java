/** What moves a plan: entries that decide much, returns over steps of two of them, and how far the usual range of each moves them. */
package org.benchmetre.farm.levers;
