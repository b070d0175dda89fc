/** What a lender asks of the years of a plan beyond its cash: depreciation and income as taxes count them. */
package org.benchmetre.farm.lending;
