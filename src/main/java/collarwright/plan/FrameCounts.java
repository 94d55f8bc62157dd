package collarwright.plan;

import collarwright.dome.Dome;

/**
 * Maxwell's count of a frame of pin-jointed struts: its struts and supports less three for each hub. Below 0 the frame may
 * be a mechanism; 0 or more does not prove that it is stiff.
 *
 * <p>Source: J. C. Maxwell, On the calculation of the equilibrium and stiffness of frames, Philosophical Magazine 27, 1864
 * (from memory).
 */
public final class FrameCounts {

    private FrameCounts() {}

    /**
     * Counts a frame that stands on its feet.
     *
     * @param dome the frame
     * @return struts − 3 · hubs + 3 · foot hubs; where it has no foot, struts − 3 · hubs + 6
     */
    public static int onFeet(Dome dome) {
        int feet = dome.feet().size();
        return dome.memberCount() - 3 * dome.nodeCount() + (feet == 0 ? 6 : 3 * feet);
    }
}
