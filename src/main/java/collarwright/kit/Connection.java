package collarwright.kit;

import collarwright.hub.StrutTip;

/**
 * One strut end in its hole.
 *
 * @param member member index
 * @param tip which end of it
 * @param node node index
 * @param hole hole on the pattern, from 1
 */
public record Connection(int member, StrutTip tip, int node, int hole) {}
