package collarwright.rehearsal;

/**
 * Something wrong in a program's text or in what it does.
 *
 * @param line line of the text, from 1
 * @param expected what should be there
 * @param found what is there
 */
record Fault(int line, String expected, String found) {}
