/** What a lender looks at first: what funds are used for, the loans that pay for it, and flows of cash of one's own. */
package org.benchmetre.farm.loans;
