/**
 * Parts of screens that several screens use: lists, fields, forms, text that scrolls, drawings in cells. It does not know
 * what they hold.
 */
@NullMarked
package thalweg.tui.widget;

import org.jspecify.annotations.NullMarked;
