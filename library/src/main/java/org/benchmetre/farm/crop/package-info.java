/** Plants: kinds of plant stock and what they cost. */
package org.benchmetre.farm.crop;
