/** The feed: a recipe in mmol/L, the salts and the acid that make it, and what a volume of it costs. */
package org.benchmetre.farm.feed;
