package collarwright.rehearsal;

import collarwright.machining.ProgramFile;
import collarwright.machining.RotarySettings;

/**
 * A program as it was read: its words, and what a control does with them.
 *
 * @param file the program
 * @param blocks its lines with words
 * @param run what they do
 */
record Reading(ProgramFile file, BlockReader blocks, Interpreter.Run run) {

    static Reading of(ProgramFile file, RotarySettings settings) {
        BlockReader reader = BlockReader.read(file.text());
        Interpreter.Run run = Interpreter.run(reader.blocks(), Pose.UNKNOWN, Interpreter.Dialect.of(settings));
        return new Reading(file, reader, run);
    }
}
