package collarwright.picture;

import collarwright.dome.Dome;
import collarwright.geometry.Vec3;
import collarwright.kit.CardWords;
import collarwright.kit.StepCard;
import collarwright.plan.Plan;
import collarwright.units.Angles;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A step card: what stands already in grey, what goes in now dark and wide, seen from the side on which it goes in; its
 * number, and its few words below.
 */
public final class StepPicture implements Picture {

    private static final double WIDTH = 87;
    private static final double HEIGHT = 76;
    private static final double LINE = 5;
    private static final double PAD = 2.5;
    private static final double TALL = 45;

    private final Plan plan;
    private final Dome dome;
    private final StepCard card;
    private final BitSet standing;
    private final DomeView view;
    private final double scale;
    private final Spot origin;

    /**
     * Prepares the card.
     *
     * @param plan the plan
     * @param card what it says
     * @param standing members that stand before it
     */
    public StepPicture(Plan plan, StepCard card, BitSet standing) {
        this.plan = plan;
        this.dome = plan.hubs().dome();
        this.card = card;
        this.standing = (BitSet) standing.clone();
        this.view = view();
        List<Spot> spots = IntStream.range(0, dome.nodeCount())
                .mapToObj(node -> view.spot(dome.node(node)))
                .toList();
        double left = spots.stream().mapToDouble(Spot::x).min().orElseThrow();
        double right = spots.stream().mapToDouble(Spot::x).max().orElseThrow();
        double high = spots.stream().mapToDouble(Spot::y).min().orElseThrow();
        double low = spots.stream().mapToDouble(Spot::y).max().orElseThrow();
        this.scale = StrictMath.min((WIDTH - 16) / (right - left), TALL / (low - high));
        this.origin = new Spot(
                WIDTH / 2 - (left + right) / 2 * scale,
                PAD + 2 + TALL - low * scale - (TALL - (low - high) * scale) / 2);
    }

    // From where its struts lie, a little from above.
    private DomeView view() {
        Vec3 sum = new Vec3(0, 0, 0);
        for (var step : card.steps()) {
            Vec3 a = dome.node(dome.memberA(step.member()));
            Vec3 b = dome.node(dome.memberB(step.member()));
            sum = sum.plus(a.minus(dome.middle())).plus(b.minus(dome.middle()));
        }
        boolean aside = StrictMath.hypot(sum.x(), sum.y())
                > 0.2 * StrictMath.max(1, card.steps().size());
        double azimuth = aside ? StrictMath.atan2(sum.y(), sum.x()) : Angles.radians(11);
        return DomeView.from(azimuth, Angles.radians(24));
    }

    @Override
    public double width() {
        return WIDTH;
    }

    @Override
    public double height() {
        return HEIGHT;
    }

    @Override
    public String describe() {
        return "Card " + card.number() + ": " + String.join(", ", new CardWords(plan).lines(card))
                + ". What stands is grey, what goes in is dark.";
    }

    private Spot spot(int node) {
        Spot bare = view.spot(dome.node(node));
        return origin.plus(bare.x() * scale, bare.y() * scale);
    }

    @Override
    public void paint(Sketch sketch) {
        sketch.draw(
                Stroking.solid(Stroking.NARROW, Ink.GREY),
                new java.awt.geom.Rectangle2D.Double(0.2, 0.2, WIDTH - 0.4, HEIGHT - 2));
        MemberPaths paths = new MemberPaths(2);
        standing.stream().forEach(m -> paths.add(0, spot(dome.memberA(m)), spot(dome.memberB(m))));
        card.steps().forEach(s -> paths.add(1, spot(dome.memberA(s.member())), spot(dome.memberB(s.member()))));
        paths.draw(
                sketch,
                style -> style == 0 ? Stroking.solid(0.35, Ink.FAR) : Stroking.solid(2 * Stroking.WIDE, Ink.INK));
        List<Integer> dark =
                card.rings() ? IntStream.range(0, dome.nodeCount()).boxed().toList() : card.hubs();
        dark.forEach(node -> sketch.fill(Ink.INK, Sketch.circle(spot(node), 1.3)));
        Badges.number(sketch, new Spot(6, 6), card.number());
        words(sketch);
    }

    private void words(Sketch sketch) {
        List<String> lines = new ArrayList<>();
        for (String line : new CardWords(plan).lines(card)) {
            StringBuilder now = new StringBuilder();
            for (String word : line.split(" ")) {
                boolean full = sketch.widthOf(now + " " + word) > WIDTH - 2 * PAD - 1;
                if (full) {
                    lines.add(now.toString());
                    now.setLength(0);
                }
                now.append(now.isEmpty() ? "" : " ").append(word);
            }
            lines.add(now.toString());
        }
        double y = HEIGHT - 6 - (lines.size() - 1) * LINE;
        for (int i = 0; i < lines.size(); i++) {
            Label label = Label.of(lines.get(i), PAD + 0.5, y + i * LINE, Label.Side.LEFT)
                    .onPaper();
            sketch.write(i == 0 ? label.strong() : label);
        }
    }
}
