package collarwright.plan;

import collarwright.job.ShopTimes;
import collarwright.machining.BenchProgram;
import collarwright.machining.EndPlan;
import collarwright.machining.EndTask;
import collarwright.machining.FlatPlan;
import collarwright.machining.FlatTask;
import collarwright.machining.RotaryPlan;
import collarwright.tooling.Pattern;
import java.util.ArrayList;
import java.util.List;

/**
 * How long an order takes, in the shop and on site, and what it costs by the hour: estimates, no promise.
 *
 * <p>Times of programs come from their moves; all others are counts times what the job says for one (the usual times are
 * common practice or our choice, no source). Each row is rounded up to whole minutes, so that printed rows add up to their
 * printed sums.
 *
 * @param rows in the order of the work
 * @param money what an hour costs
 */
public record WorkTime(List<Row> rows, ShopTimes.Money money) {

    /** Keeps the rows. */
    public WorkTime {
        rows = List.copyOf(rows);
    }

    /** Where work is done. */
    public enum Place {
        /** In the shop. */
        SHOP,
        /** Where the domes are put up. */
        SITE
    }

    /** A kind of work. */
    public enum Work {
        /** Sticks of pipe are put in the machine. */
        LOAD_STICKS(Place.SHOP, "put sticks of pipe in the machine"),
        /** Cutters are put in, and their height is set. */
        CHANGE_CUTTERS(Place.SHOP, "put in cutters and set their height"),
        /** Programs run. */
        RUN_PROGRAMS(Place.SHOP, "run the programs, air cuts not counted", true),
        /** Strips are laid on the flat machine. */
        LAY_STRIPS(Place.SHOP, "lay flat strips on the machine, once for each cutter"),
        /** Programs drill strips. */
        DRILL_STRIPS(Place.SHOP, "run the programs for flat strips", true),
        /** Collars are clamped at the press. */
        CLAMP_COLLARS(Place.SHOP, "clamp collars and lay the template on"),
        /** Holes are drilled at the press. */
        DRILL_HOLES(Place.SHOP, "drill holes at the press"),
        /** Collars are cut off. */
        CUT_COLLARS(Place.SHOP, "cut collars off"),
        /** Strips are cut out of the sheet. */
        CUT_STRIPS(Place.SHOP, "cut flat strips out"),
        /** Strips are rolled and their ends closed. */
        ROLL_STRIPS(Place.SHOP, "roll flat strips and close their ends"),
        /** Centre rings are cut off. */
        CUT_RINGS(Place.SHOP, "cut centre rings off"),
        /** Struts are sawn. */
        CUT_STRUTS(Place.SHOP, "saw struts"),
        /** Tie holes are drilled. */
        DRILL_TIES(Place.SHOP, "drill tie holes"),
        /** Struts are laid on the bed. */
        LAY_STRUTS(Place.SHOP, "lay struts against the stop of the bed"),
        /** Programs drill tie holes. */
        DRILL_ENDS(Place.SHOP, "run the programs for strut ends", true),
        /** A hand turns pipe or struts to the next angle. */
        TURN_BY_HAND(Place.SHOP, "turn pipe or struts by hand to their next angle"),
        /** Strut ends are joined to their hubs. */
        CONNECT(Place.SITE, "join strut ends to hubs");

        private final Place place;
        private final String title;
        private final boolean program;

        Work(Place place, String title) {
            this(place, title, false);
        }

        Work(Place place, String title, boolean program) {
            this.place = place;
            this.title = title;
            this.program = program;
        }

        /**
         * Tells whether its time comes from programs.
         *
         * @return false where it is a count times what the job says for one
         */
        public boolean byProgram() {
            return program;
        }

        /**
         * Returns where it is done.
         *
         * @return shop or site
         */
        public Place place() {
            return place;
        }

        /**
         * Returns its name for people.
         *
         * @return such as {@code saw struts}
         */
        public String title() {
            return title;
        }
    }

    /**
     * One kind of work.
     *
     * @param work what
     * @param count how often
     * @param seconds for all of it
     */
    public record Row(Work work, long count, double seconds) {

        /**
         * Returns what is printed and added up.
         *
         * @return whole minutes, rounded up
         */
        public long minutes() {
            return (long) StrictMath.ceil(seconds / 60 - 1e-9);
        }
    }

    /**
     * What an order asks of the machines that run programs.
     *
     * @param rotary of a machine that turns the pipe; nothing for a press
     * @param ends of a bed for struts
     * @param strips of a flat machine
     */
    public record Machines(RotaryPlan.Summary rotary, EndPlan ends, FlatPlan strips) {

        /**
         * The machine that turns the pipe and no other.
         *
         * @param rotary what is asked of it
         * @return struts drilled on a press, collars from pipe
         */
        public static Machines only(RotaryPlan.Summary rotary) {
            return new Machines(rotary, EndPlan.NONE, FlatPlan.NONE);
        }
    }

    /**
     * Estimates an order.
     *
     * @param plan the plan
     * @param machines what the order asks of machines that run programs
     * @return the estimate; rows for what has a count only
     */
    public static WorkTime of(Plan plan, Machines machines) {
        ShopTimes times = plan.job().shop().times();
        OrderTotals made = OrderTotals.of(plan);
        List<Row> rows = new ArrayList<>();
        boolean flat = plan.job().shop().strip().isPresent();
        if (flat) {
            strips(machines, times, rows);
        } else if (plan.job().shop().machine().programmed()) {
            sticks(plan, machines, rows);
        } else {
            rows.add(row(Work.CLAMP_COLLARS, made.collars(), times.pressCollar()));
            rows.add(row(Work.CHANGE_CUTTERS, changes(plan) + drill(machines), times.cutterChange()));
            rows.add(row(Work.DRILL_HOLES, holes(plan), times.pressHole()));
        }
        rows.add(row(flat ? Work.CUT_STRIPS : Work.CUT_COLLARS, made.collars(), times.pieceCut()));
        rows.add(row(Work.ROLL_STRIPS, flat ? made.collars() : 0, times.hands().roll()));
        rows.add(row(Work.CUT_RINGS, made.rings(), times.pieceCut()));
        rows.add(row(Work.CUT_STRUTS, made.struts(), times.pieceCut()));
        ties(plan, machines, made, rows);
        long turns = (flat ? 0 : machines.rotary().effort().handTurns()) + strutTurns(machines);
        rows.add(row(Work.TURN_BY_HAND, turns, times.hands().turn()));
        long ends = 2L * plan.hubs().dome().memberCount() * plan.job().order().domes();
        rows.add(row(Work.CONNECT, ends, times.connection()));
        return new WorkTime(rows.stream().filter(r -> r.count() > 0).toList(), times.money());
    }

    private static void sticks(Plan plan, Machines machines, List<Row> rows) {
        ShopTimes times = plan.job().shop().times();
        RotaryPlan.Summary rotary = machines.rotary();
        boolean table = plan.job().shop().machine().post().layout().habits().lengthTable();
        // Cutters of a tool changer whose lengths stand in its table are put in once for the whole order.
        long changes = table ? rotary.cutters() : rotary.cutterRuns();
        rows.add(row(Work.LOAD_STICKS, rotary.sticks(), times.stickLoad()));
        rows.add(row(Work.CHANGE_CUTTERS, changes + drill(machines), times.cutterChange()));
        rows.add(
                new Row(Work.RUN_PROGRAMS, rotary.programRuns(), rotary.effort().seconds()));
    }

    /**
     * Where a file has one cutter, it goes through all strips of a pattern before the next is put in, as at the press; where a file has all of them,
     * they change on every strip.
     */
    private static void strips(Machines machines, ShopTimes times, List<Row> rows) {
        long cutters = 0;
        long runs = 0;
        double seconds = 0;
        for (BenchProgram<FlatTask> program : machines.strips().programs()) {
            int pieces = program.air() ? 0 : program.task().strip().made();
            cutters += (long) program.tasks().size()
                    * (program.air() ? 0 : program.tasks().size() > 1 ? pieces : 1);
            runs += pieces;
            seconds += pieces * program.seconds();
        }
        rows.add(row(Work.LAY_STRIPS, runs, times.pressCollar()));
        rows.add(row(Work.CHANGE_CUTTERS, cutters + drill(machines), times.cutterChange()));
        rows.add(new Row(Work.DRILL_STRIPS, runs, seconds));
    }

    /** The one drill of the bed is put in once. */
    private static long drill(Machines machines) {
        return machines.ends().programs().isEmpty() ? 0 : 1;
    }

    private static void ties(Plan plan, Machines machines, OrderTotals made, List<Row> rows) {
        ShopTimes times = plan.job().shop().times();
        if (machines.ends().programs().isEmpty()) {
            boolean drilled = plan.job().strut().tieHole().isPresent();
            rows.add(row(Work.DRILL_TIES, drilled ? 2L * made.struts() : 0, times.tieHole()));
            return;
        }
        long runs = 0;
        double seconds = 0;
        for (BenchProgram<EndTask> program : machines.ends().programs()) {
            int pieces = program.air() ? 0 : program.task().stops().made();
            runs += pieces;
            seconds += pieces * program.seconds();
        }
        rows.add(row(Work.LAY_STRUTS, runs, times.pressCollar()));
        rows.add(new Row(Work.DRILL_ENDS, runs, seconds));
    }

    /** A strut is turned before each hole that says so. */
    private static long strutTurns(Machines machines) {
        long turns = 0;
        for (BenchProgram<EndTask> program : machines.ends().programs()) {
            long each =
                    program.task().holes().stream().filter(h -> h.turn() != 0).count();
            turns += program.air() ? 0 : each * program.task().stops().made();
        }
        return turns;
    }

    private static Row row(Work work, long count, double each) {
        return new Row(work, count, count * each);
    }

    /** At the press each cutter goes through all collars of a pattern before the next is put in. */
    private static long changes(Plan plan) {
        return plan.book().patterns().stream()
                .mapToLong(p ->
                        p.holes().stream().map(h -> h.cutter().id()).distinct().count())
                .sum();
    }

    private static long holes(Plan plan) {
        long holes = 0;
        for (Pattern pattern : plan.book().patterns()) {
            holes += (long) plan.job().order().made(pattern.count())
                    * pattern.holes().size();
        }
        return holes;
    }

    /**
     * Sums up what is done at a place.
     *
     * @param place shop or site
     * @return whole minutes, the sum of the rows' whole minutes
     */
    public long minutes(Place place) {
        return rows.stream()
                .filter(r -> r.work().place() == place)
                .mapToLong(Row::minutes)
                .sum();
    }

    /**
     * Returns what the work at a place costs.
     *
     * @param place shop or site
     * @return minutes times the price of an hour; 0 where the job gives none
     */
    public double cost(Place place) {
        double hour = place == Place.SHOP ? money.shopHour() : money.siteHour();
        return minutes(place) * hour / 60;
    }
}
