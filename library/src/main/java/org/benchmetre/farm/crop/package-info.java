/** Plants and fruit: kinds of plant stock and what they cost, yield by month, first fruit and warmth, channels, receipts. */
package org.benchmetre.farm.crop;
