package collarwright.job;

import collarwright.machining.CuttingData;
import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;

/**
 * The shop's side of a job.
 *
 * @param machine the machine that drills
 * @param programUnits millimetres or inches in programs
 * @param cutting speeds and feeds for the collar's material
 */
public record Shop(Machine machine, ProgramUnits programUnits, CuttingData cutting) {}
