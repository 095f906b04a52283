/**
 * What the program does, one class a verb; screens and commands share them. It does not know who asked, nor how the
 * answer is shown.
 */
@NullMarked
package thalweg.service;

import org.jspecify.annotations.NullMarked;
