/**
 * Writes files and folders so that nobody ever finds half of one: into a part beside the target, which is then moved into place. Knows no
 * budget and no spreadsheet; depends on nothing else of ours.
 */
package org.benchmetre.files;
