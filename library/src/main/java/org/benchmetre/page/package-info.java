/**
 * What a page is: one question of one reader, and blocks that refer to lines. A page places figures and never makes them. It knows no
 * crop, no spreadsheet and no console; whoever draws it walks over its blocks.
 */
package org.benchmetre.page;
