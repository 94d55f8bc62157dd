/**
 * What is wrong, doubtful or worth knowing, with its place and its cure. Imports only java.base.
 */
@NullMarked
package collarwright.finding;

import org.jspecify.annotations.NullMarked;
