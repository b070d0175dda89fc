/** The commands. Thin: parse, call the library, print through the command's writers, answer an exit code. */
package org.benchmetre.batch;
