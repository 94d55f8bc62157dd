package collarwright.job;

import collarwright.collar.HubSettings;
import collarwright.dome.DomeSource;
import collarwright.strut.SizeRule;
import collarwright.strut.StrutSettings;
import collarwright.tooling.DrillingSettings;

/**
 * A job as it was read: every value resolved, every profile looked up.
 *
 * @param title the job's title in any script
 * @param revision 8 letters that stand for everything below, not for comments, paths or the program's version
 * @param order how much is made
 * @param dome which dome
 * @param size what fixes its size
 * @param strut what struts are made of
 * @param hub what hubs are made of
 * @param drilling which cutters there are and how they are chosen
 * @param limits what the checks hold the plan to
 * @param shop the machine and its cutting data
 * @param sheet how templates are printed
 * @param cutting how pieces are cut from stock
 * @param site how kits are packed
 */
public record Job(
        String title,
        String revision,
        Order order,
        DomeSource dome,
        SizeRule size,
        StrutSettings strut,
        HubSettings hub,
        DrillingSettings drilling,
        Limits limits,
        Shop shop,
        SheetSettings sheet,
        CuttingSettings cutting,
        SiteSettings site) {

    /**
     * A job that is printed, cut and packed as usual.
     *
     * @param title the job's title in any script
     * @param revision its revision
     * @param order how much is made
     * @param dome which dome
     * @param size what fixes its size
     * @param strut what struts are made of
     * @param hub what hubs are made of
     * @param drilling which cutters there are and how they are chosen
     * @param limits what the checks hold the plan to
     * @param shop the machine and its cutting data
     */
    public Job(
            String title,
            String revision,
            Order order,
            DomeSource dome,
            SizeRule size,
            StrutSettings strut,
            HubSettings hub,
            DrillingSettings drilling,
            Limits limits,
            Shop shop) {
        this(
                title,
                revision,
                order,
                dome,
                size,
                strut,
                hub,
                drilling,
                limits,
                shop,
                SheetSettings.USUAL,
                CuttingSettings.USUAL,
                SiteSettings.USUAL);
    }

    /**
     * The same job with another hub.
     *
     * @param other collar, ring and how they are put together
     * @return a job that differs in nothing else, its revision neither
     */
    public Job with(HubSettings other) {
        return new Job(title, revision, order, dome, size, strut, other, drilling, limits, shop, sheet, cutting, site);
    }

    /**
     * The same job in another shop.
     *
     * @param other machine, cutting data, times
     * @return a job that differs in nothing else, its revision neither
     */
    Job with(Shop other) {
        return new Job(title, revision, order, dome, size, strut, hub, drilling, limits, other, sheet, cutting, site);
    }

    /**
     * The same job with another revision.
     *
     * @param other 8 letters
     * @return a job that differs in nothing else
     */
    Job revised(String other) {
        return new Job(title, other, order, dome, size, strut, hub, drilling, limits, shop, sheet, cutting, site);
    }

    /**
     * The same job cut otherwise.
     *
     * @param other saw, stock lengths and offcuts
     * @return a job that differs in nothing else, its revision neither
     */
    public Job with(CuttingSettings other) {
        return new Job(title, revision, order, dome, size, strut, hub, drilling, limits, shop, sheet, other, site);
    }
}
