package collarwright.plan;

import collarwright.cutting.CutPiece;
import collarwright.cutting.CutPlan;
import collarwright.cutting.CuttingPlanner;
import collarwright.cutting.CuttingTask;
import collarwright.cutting.MergedLengths;
import collarwright.cutting.SawSettings;
import collarwright.cutting.StickLayout;
import collarwright.cutting.StockLength;
import collarwright.finding.Finding;
import collarwright.job.CuttingSettings;
import collarwright.job.Job;
import collarwright.job.PriceList;
import collarwright.machining.Machine;
import collarwright.machining.SetupSheet;
import collarwright.plan.StockNeed.Role;
import collarwright.stock.RoundStock;
import collarwright.strut.SizeRule;
import collarwright.strut.StrutType;
import collarwright.tooling.Pattern;
import collarwright.units.Decimals;
import collarwright.units.Ids;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * All parts of an order with the sticks that they are cut from: struts, then collars, then centre rings. Where a machine
 * drills collars on sticks, these sticks are cut from the stock in their place; collars that are made of strip take no pipe.
 *
 * @param needs struts, collars and rings, in this order; ties are not stock
 * @param offcuts what is left over afterwards: pieces that were not cut keep their place, and a rest of an offcut its name
 * @param findings what a person has to know
 */
public record StockWork(List<StockNeed> needs, List<CuttingSettings.Offcut> offcuts, List<Finding> findings) {

    /** Nothing is cut. */
    public static final StockWork NONE = new StockWork(List.of(), List.of(), List.of());

    /** Keeps the lists. */
    public StockWork {
        needs = List.copyOf(needs);
        offcuts = List.copyOf(offcuts);
        findings = List.copyOf(findings);
    }

    /**
     * Plans the cutting of an order, without the sticks of a machine that runs programs.
     *
     * @param plan the plan
     * @return needs with their cutting plans, and the next inventory of offcuts
     */
    public static StockWork of(Plan plan) {
        return of(plan, List.of());
    }

    /**
     * Plans the cutting of an order.
     *
     * @param plan the plan
     * @param setups what lies on the sticks of the machine that drills collars; none for a press
     * @return needs with their cutting plans, and the next inventory of offcuts
     */
    public static StockWork of(Plan plan, List<SetupSheet> setups) {
        Making making = new Making(plan, setups);
        making.run();
        return new StockWork(making.needs, making.left, making.findings);
    }

    /**
     * Returns what the saw takes in a job.
     *
     * @param job the job
     * @return the job's saw; where it names none and its size follows from a stick's pieces, what was counted there
     */
    public static SawSettings saw(Job job) {
        SawSettings saw = job.cutting().saw();
        return saw.equals(SawSettings.USUAL) && job.size() instanceof SizeRule.PiecesPerStock rule
                ? new SawSettings(rule.kerf(), rule.trim(), 0, 0)
                : saw;
    }

    /**
     * Returns what a kind of part can be cut from.
     *
     * @param job the job
     * @param role the part
     * @return new sticks in the lengths that are given or that the stock is sold in, and offcuts
     */
    static List<StockLength> stocks(Job job, Role role) {
        return stocks(job, role, job.cutting().offcuts());
    }

    private static List<StockLength> stocks(Job job, Role role, List<CuttingSettings.Offcut> offcuts) {
        CuttingSettings cutting = job.cutting();
        RoundStock stock = stock(job, role);
        List<StockLength> given = switch (role) {
            case STRUT -> cutting.struts();
            case COLLAR -> cutting.collars();
            case RING -> cutting.rings();
        };
        List<StockLength> all = new ArrayList<>();
        offcuts.stream()
                .filter(o -> o.stock().equals(stock.inventoryName()))
                .forEach(o -> all.add(StockLength.offcut(o.id(), o.length())));
        all.addAll(given);
        if (given.isEmpty()) {
            stock.lengths().stream()
                    .distinct()
                    .forEach(l -> all.add(StockLength.unlimited(Decimals.trimmed(l, 1) + " mm", l)));
        }
        return priced(all, stock, cutting.prices());
    }

    // With the prices of the user's file, where it has one for every new length and the job has none of its own.
    private static List<StockLength> priced(List<StockLength> all, RoundStock stock, PriceList prices) {
        List<StockLength> priced = new ArrayList<>();
        for (StockLength one : all) {
            Optional<Double> price = one.offcut() || one.price().isPresent()
                    ? Optional.empty()
                    : prices.stick(stock.name(), one.length(), stock.kg(one.length()))
                            .filter(p -> p <= StockLength.DEAREST);
            if (!one.offcut() && price.isEmpty()) {
                return all;
            }
            priced.add(price.map(p -> new StockLength(one.id(), one.length(), price, one.atHand(), false))
                    .orElse(one));
        }
        return priced;
    }

    /**
     * Names all layouts of sticks: letters that go on through struts, collars and rings.
     *
     * @return for each of the needs with a cutting plan, the names of its layouts in their order
     */
    public List<List<String>> layoutNames() {
        List<List<String>> names = new ArrayList<>();
        int next = 0;
        for (StockNeed need : needs) {
            int count = need.plan().map(p -> p.layouts().size()).orElse(0);
            int first = next;
            names.add(IntStream.range(first, first + count)
                    .mapToObj(i -> Ids.letters('U', i))
                    .toList());
            next += count;
        }
        return List.copyOf(names);
    }

    private static RoundStock stock(Job job, Role role) {
        return switch (role) {
            case STRUT -> job.strut().stock();
            case COLLAR -> job.hub().collar();
            case RING -> job.hub().ring();
        };
    }

    private static final class Making {
        private final Plan plan;
        private final Job job;
        private final OrderTotals made;
        private final SawSettings saw;
        private final List<StockNeed> needs = new ArrayList<>();
        private final List<Finding> findings = new ArrayList<>();
        private List<CuttingSettings.Offcut> left;
        private final List<SetupSheet> setups;
        private int newOffcuts;

        Making(Plan plan, List<SetupSheet> setups) {
            this.plan = plan;
            this.setups = setups;
            job = plan.job();
            made = OrderTotals.of(plan);
            saw = saw(job);
            left = job.cutting().offcuts();
        }

        void run() {
            prices();
            double net = 0;
            for (StrutType type : plan.struts().types()) {
                net += job.order().made(type.count()) * type.cut();
            }
            need(Role.STRUT, made.struts(), net, struts());
            Machine machine = job.shop().machine();
            double collars = made.collars() * job.hub().width();
            boolean pipe = job.shop().strip().isEmpty();
            if (pipe && machine.programmed()) {
                Optional<CutPlan> sticks = cut(Role.COLLAR, machineSticks());
                needs.add(new StockNeed(
                        Role.COLLAR,
                        job.hub().collar(),
                        made.collars(),
                        collars,
                        OptionalDouble.of(machine.rotary().partingKerf()),
                        sticks,
                        sticks.isPresent()));
            } else if (pipe) {
                need(Role.COLLAR, made.collars(), collars, collars());
            }
            double ring = job.hub().ringWidth();
            need(
                    Role.RING,
                    made.rings(),
                    made.rings() * ring,
                    made.rings() == 0 ? List.of() : List.of(new CutPiece("ring", ring, made.rings())));
        }

        // Several parts may be cut from stock of one name, each from lengths of its own.
        private void prices() {
            boolean pipe = job.shop().strip().isEmpty();
            Map<String, List<StockLength>> lengths = new LinkedHashMap<>();
            Map<String, RoundStock> named = new LinkedHashMap<>();
            for (Role role : Role.values()) {
                if (pipe || role != Role.COLLAR) {
                    RoundStock stock = stock(job, role);
                    named.putIfAbsent(stock.name(), stock);
                    lengths.computeIfAbsent(stock.name(), n -> new ArrayList<>())
                            .addAll(stocks(job, role));
                }
            }
            named.forEach((name, stock) -> findings.addAll(PriceNotes.of(
                    stock, lengths.getOrDefault(name, List.of()), job.cutting().prices())));
        }

        // A strut without a length is a stop of its own.
        private List<CutPiece> struts() {
            List<StrutType> types = plan.struts().types();
            if (types.stream().anyMatch(t -> !(t.cut() > 0))) {
                return List.of();
            }
            List<Double> lengths = MergedLengths.of(
                    types.stream().map(StrutType::cut).toList(), job.cutting().merge());
            List<CutPiece> pieces = new ArrayList<>();
            for (int i = 0; i < types.size(); i++) {
                int count = job.order().made(types.get(i).count());
                pieces.add(new CutPiece(types.get(i).id(), lengths.get(i), count));
            }
            return pieces;
        }

        private List<CutPiece> collars() {
            List<CutPiece> pieces = new ArrayList<>();
            for (Pattern pattern : plan.book().patterns()) {
                pieces.add(new CutPiece(
                        pattern.id(), job.hub().width(), job.order().made(pattern.count())));
            }
            return pieces;
        }

        // Longer ones than any stock have a finding of the machine, or nobody knows what the pipe is sold in.
        private List<CutPiece> machineSticks() {
            if (job.shop().strip().isPresent()) {
                return List.of();
            }
            double longest = new CuttingTask(List.of(), stocks(job, Role.COLLAR, left), saw).longestPiece();
            List<CutPiece> sticks = setups.stream()
                    .map(s -> new CutPiece(
                            s.load().id(), s.stick().needed(), s.load().runs()))
                    .toList();
            return sticks.stream().allMatch(s -> s.length() <= longest) ? sticks : List.of();
        }

        private void need(Role role, int count, double net, List<CutPiece> pieces) {
            Optional<CutPlan> cut = cut(role, pieces);
            OptionalDouble kerf = cut.isPresent() ? OptionalDouble.of(saw.kerf()) : OptionalDouble.empty();
            needs.add(new StockNeed(role, stock(job, role), count, net, kerf, cut, false));
        }

        private Optional<CutPlan> cut(Role role, List<CutPiece> pieces) {
            List<StockLength> stocks = stocks(job, role, left);
            Optional<CutPlan> cut = Optional.empty();
            if (!pieces.isEmpty() && !stocks.isEmpty()) {
                CuttingTask task = new CuttingTask(pieces, stocks, saw);
                StockFindings faults = new StockFindings(role, stock(job, role), task);
                if (!faults.kerf(findings)) {
                    CutPlan found = CuttingPlanner.plan(task);
                    faults.of(found, findings);
                    carry(found, stock(job, role).inventoryName());
                    cut = Optional.of(found);
                }
            }
            return cut;
        }

        // Pieces that were cut leave the inventory; rests that are worth it come in.
        private void carry(CutPlan cut, String stock) {
            Set<String> used = new HashSet<>();
            List<CuttingSettings.Offcut> rests = new ArrayList<>();
            List<CuttingSettings.Offcut> fresh = new ArrayList<>();
            for (StickLayout layout : cut.layouts()) {
                double rest = layout.sums().remainder();
                boolean kept = rest > 0 && rest >= job.cutting().keep();
                if (layout.stock().offcut()) {
                    used.add(layout.stock().id());
                    if (kept) {
                        rests.add(new CuttingSettings.Offcut(layout.stock().id(), stock, rest));
                    }
                } else if (kept) {
                    for (int run = 0; run < layout.runs(); run++) {
                        fresh.add(new CuttingSettings.Offcut(nextId(), stock, rest));
                    }
                }
            }
            List<CuttingSettings.Offcut> next = new ArrayList<>();
            for (CuttingSettings.Offcut offcut : left) {
                if (!offcut.stock().equals(stock) || !used.contains(offcut.id())) {
                    next.add(offcut);
                } else {
                    rests.stream().filter(r -> r.id().equals(offcut.id())).forEach(next::add);
                }
            }
            next.addAll(fresh);
            left = next;
        }

        // The revision stands for the inventory too, so that no name comes twice.
        private String nextId() {
            newOffcuts++;
            return job.revision().toUpperCase(Locale.ROOT) + "-" + newOffcuts;
        }
    }
}
