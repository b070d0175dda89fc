/** Loans as a lender sees them: what they are for, what secures them, and their schedules of payments. */
package org.benchmetre.farm.loans;
