/**
 * Support for tests: programs from outside that read what we write, silence, seeds.
 *
 * <p>Each outside program has one class here that finds it, runs it with a time limit and hands back what it said as
 * values. A test that needs one says so with {@link collarwright.testing.NeedsChecker}. Lengths come back in millimetres
 * unless a name says otherwise.
 */
package collarwright.testing;
