/**
 * Reads job files and profiles into the value types of the stages, and says everything that is wrong with them.
 *
 * <p>A text becomes tables and keys with their places ({@link collarwright.job.TomlReader}), those become values in
 * millimetres and radians, resolved against the profiles ({@link collarwright.job.Profiles}), and a job gets its revision.
 * Lengths are read exactly and rounded once; where a job leaves a key out, its usual value holds, stated where it is read.
 * Findings are collected, never thrown one by one.
 *
 * <p>It knows no axes of its own. It may import the value types of the stages, units and finding; it is the only package
 * that knows TOML, and it opens nothing but the program's own resources and the profile folders it is given.
 */
@NullMarked
package collarwright.job;

import org.jspecify.annotations.NullMarked;
