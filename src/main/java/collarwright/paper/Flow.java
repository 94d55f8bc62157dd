package collarwright.paper;

import collarwright.paper.PageItem.Area;
import collarwright.picture.Ink;
import collarwright.picture.Lettering;
import collarwright.picture.Picture;
import collarwright.picture.Written;
import collarwright.units.Paper;
import java.util.ArrayList;
import java.util.List;

/** Fills pages from top to bottom. Upright, A4 unless said; sizes of letters in mm, none below 11 points. */
final class Flow {

    static final double PAGE_WIDTH = 210;
    static final double PAGE_HEIGHT = 297;
    static final double LEFT = 15;
    static final double WIDTH = 180;

    /** Size of running text and tables: 11.3 points. */
    static final double BODY = 4;

    static final double LINE = 5;

    private static final double HEAD = 5;

    private static final double TOP = 22;
    private static final double SHORT_TOP = 20;

    /** What the foot of a page takes. */
    private static final double FOOT = 19;

    /** On Letter, which is 17.6 mm shorter: 1 mm above the rule at the foot. */
    private static final double SHORT_FOOT = 16.5;

    private final Lettering letters;
    private final Wrapping body;
    private final double top;
    private final double bottom;
    private final List<Page> pages = new ArrayList<>();
    private List<PageItem> items = new ArrayList<>();
    private String section = "";
    private double y;
    private String heading = "";

    Flow(Lettering letters) {
        this(letters, Paper.A4);
    }

    Flow(Lettering letters, Paper paper) {
        this.letters = letters;
        this.top = paper == Paper.A4 ? TOP : SHORT_TOP;
        this.y = top;
        this.bottom = paper.longSide() - (paper == Paper.A4 ? FOOT : SHORT_FOOT);
        this.body = new Wrapping(letters, BODY);
    }

    /** Whether the page is short, and tables stand closer. */
    boolean tight() {
        return top < TOP;
    }

    Lettering letters() {
        return letters;
    }

    /** Starts a page, and names what it is about. */
    void page(String about) {
        turn();
        section = about;
    }

    private void turn() {
        if (!items.isEmpty()) {
            pages.add(new Page(section, items));
            items = new ArrayList<>();
        }
        y = top;
    }

    /** All pages so far. */
    List<Page> pages() {
        turn();
        return List.copyOf(pages);
    }

    /** Goes on to the next page unless so much room is left. */
    void need(double height) {
        String about = heading;
        heading = "";
        List<String> lines = about.isEmpty() ? List.of() : new Wrapping(letters, HEAD).lines(about, WIDTH);
        double head = lines.isEmpty() ? 0 : 5 + lines.size() * HEAD * 1.25;
        if (y + head + height > bottom && y > top) {
            turn();
        }
        if (!lines.isEmpty()) {
            y += y > top ? 4 : 0;
            lines.forEach(line -> write(line, HEAD, true));
            y += 1;
        }
    }

    /** Leaves some room. */
    void gap(double height) {
        y += height;
    }

    void title(String text) {
        lines(text, 7, true);
        y += 2;
    }

    /** Names what comes next; a heading never stays alone at the foot of a page. */
    void heading(String text) {
        heading = text;
    }

    /** A paragraph that must not be missed. */
    void strong(String text) {
        lines(text, BODY, true);
        y += 1;
    }

    void text(String text) {
        lines(text, BODY, false);
        y += 1;
    }

    private void lines(String text, double size, boolean bold) {
        for (String line : new Wrapping(letters, size).lines(text, WIDTH)) {
            need(size * 1.25);
            write(line, size, bold);
        }
    }

    private void write(String line, double size, boolean bold) {
        words(line, LEFT, new Look(size, Ink.INK, bold));
        y += size * 1.25;
    }

    /** A list, its points with a dash. */
    void points(List<String> points) {
        for (String point : points) {
            List<String> lines = body.lines(point, WIDTH - 5);
            need(lines.size() * LINE);
            words("–", LEFT, Look.plain());
            for (String line : lines) {
                words(line, LEFT + 5, Look.plain());
                y += LINE;
            }
            y += 0.6;
        }
        y += 1;
    }

    /** Names and values in two columns. */
    void facts(List<DomeFacts.Fact> facts) {
        facts(facts, WIDTH);
    }

    /** Names and values in two columns, and a picture to their right. */
    void facts(List<DomeFacts.Fact> facts, Picture picture) {
        need(picture.height());
        double top = y;
        items.add(new PageItem.Shown(picture, LEFT + WIDTH - picture.width(), top));
        facts(facts, WIDTH - picture.width() - 4);
        y = StrictMath.max(y, top + picture.height()) + 1;
    }

    private void facts(List<DomeFacts.Fact> facts, double width) {
        double names =
                facts.stream().mapToDouble(f -> body.width(f.name())).max().orElse(0) + 5;
        for (DomeFacts.Fact fact : facts) {
            List<String> lines = body.lines(fact.value(), width - names);
            need(lines.size() * LINE);
            words(fact.name(), LEFT, new Look(BODY, Ink.GREY, false));
            for (String line : lines) {
                words(line, LEFT + names, Look.plain());
                y += LINE;
            }
            y += 0.4;
        }
        y += 1;
    }

    /** A table with its caption. */
    void grid(Grid grid) {
        new GridFlow(this, grid, true).run();
    }

    /** A table below a heading that says as much as its caption. */
    void bareGrid(Grid grid) {
        new GridFlow(this, grid, false).run();
    }

    /** Pictures side by side, each on its share of the width. */
    void pictures(Picture... side) {
        double high = 0;
        for (Picture picture : side) {
            high = StrictMath.max(high, picture.height());
        }
        need(high);
        double share = WIDTH / side.length;
        for (int i = 0; i < side.length; i++) {
            double x = LEFT + i * share + (share - side[i].width()) / 2;
            items.add(new PageItem.Shown(side[i], x, y));
        }
        y += high + 2;
    }

    double y() {
        return y;
    }

    void add(PageItem item) {
        items.add(item);
    }

    Area area(double x, double width, double height) {
        return new Area(x, y, width, height);
    }

    /** Writes a line whose box starts where the flow is. */
    void words(String text, double x, Look look) {
        String visible = letters.visible(text);
        double width = letters.width(visible, look.size());
        double baseline = y + look.size();
        items.add(new PageItem.Words(new Written(visible, x, baseline, width, look.size(), look.ink(), look.bold())));
    }

    /**
     * How words look.
     *
     * @param size of the letters
     * @param ink their colour
     * @param bold whether they are bold
     */
    record Look(double size, Ink ink, boolean bold) {

        static Look plain() {
            return new Look(BODY, Ink.INK, false);
        }

        static Look strong() {
            return new Look(BODY, Ink.INK, true);
        }
    }
}
