package collarwright.job;

import collarwright.finding.Code;

/**
 * What a kind of finding means.
 *
 * @param code the kind
 * @param cause why it comes up
 * @param example a case of it
 * @param cure what to do
 */
public record Explanation(Code code, String cause, String example, String cure) {}
