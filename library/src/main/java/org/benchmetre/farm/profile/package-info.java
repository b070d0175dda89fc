/** What is documented of a crop, as data: defaults and usual ranges with their sources. One folder of files a crop, one reader. */
package org.benchmetre.farm.profile;
