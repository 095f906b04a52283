/** Tests of what the program does, over real databases. */
@NullMarked
package thalweg.service;

import org.jspecify.annotations.NullMarked;
