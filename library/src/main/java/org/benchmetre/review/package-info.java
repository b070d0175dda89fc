/**
 * What looks wrong in a plan that was read and computed: entries that are probably not meant, warnings that the figures give, and parts
 * that do not sum to their wholes. It changes nothing and refuses nothing; it tells.
 */
package org.benchmetre.review;
