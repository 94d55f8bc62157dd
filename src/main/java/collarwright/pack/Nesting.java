package collarwright.pack;

import collarwright.cutting.SheetPacker;
import collarwright.drawing.Box;
import collarwright.drawing.FlatPart;
import collarwright.drawing.NestedSheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Parts nested on stock sheets. Sheets that are alike are one layout, which is cut as often as there are such sheets.
 *
 * @param stock the sheet
 * @param layouts what lies where, in the order of cutting
 * @param parts how many parts lie on all sheets
 * @param leastSheets the fewest sheets that areas allow
 * @param used area of all parts' boxes by that of all sheets, 0 to 1
 */
record Nesting(SheetPacker.Stock stock, List<Layout> layouts, long parts, int leastSheets, double used) {
    Nesting {
        layouts = List.copyOf(layouts);
    }

    /**
     * A sheet with its parts.
     *
     * @param sheets how many of it are cut
     * @param places its parts
     */
    record Layout(long sheets, List<NestedSheet.Place> places) {
        Layout {
            places = List.copyOf(places);
        }
    }

    /** A part, and how many of it are made. */
    record Wanted(FlatPart part, long pieces) {}

    /** Parts of any size. */
    static Nesting of(List<FlatPart> parts, SheetPacker.Stock stock) {
        SheetPacker.Nest nest =
                SheetPacker.pack(parts.stream().map(Nesting::size).toList(), stock);
        List<List<NestedSheet.Place>> sheets = new ArrayList<>();
        for (int i = 0; i < nest.sheets(); i++) {
            sheets.add(new ArrayList<>());
        }
        nest.spots().forEach(s -> sheets.get(s.sheet()).add(place(parts.get(s.part()), s)));
        return new Nesting(stock, gathered(sheets), parts.size(), nest.leastSheets(), nest.used());
    }

    /** Parts that are all of one size: every sheet is filled alike, kind after kind. */
    static Nesting alike(List<Wanted> wanted, SheetPacker.Stock stock) {
        SheetPacker.Rectangle size = new SheetPacker.Rectangle(
                wanted.stream()
                        .mapToDouble(w -> w.part().bounds().width())
                        .max()
                        .orElseThrow(),
                wanted.stream()
                        .mapToDouble(w -> w.part().bounds().height())
                        .max()
                        .orElseThrow());
        List<SheetPacker.Spot> spots = SheetPacker.fill(size, stock);
        List<Layout> layouts = new ArrayList<>();
        List<NestedSheet.Place> open = new ArrayList<>();
        long parts = 0;
        for (Wanted each : wanted) {
            long left = each.pieces();
            parts += left;
            while (left > 0) {
                long whole = left / spots.size();
                if (open.isEmpty() && whole > 0) {
                    layouts.add(new Layout(
                            whole,
                            spots.stream().map(s -> place(each.part(), s)).toList()));
                    left -= whole * spots.size();
                } else {
                    open.add(place(each.part(), spots.get(open.size())));
                    left--;
                }
                if (open.size() == spots.size()) {
                    layouts.add(new Layout(1, open));
                    open.clear();
                }
            }
        }
        if (!open.isEmpty()) {
            layouts.add(new Layout(1, open));
        }
        double area = parts * size.length() * size.width();
        long sheets = layouts.stream().mapToLong(Layout::sheets).sum();
        return new Nesting(
                stock,
                layouts,
                parts,
                SheetPacker.leastSheets(parts, size, stock),
                area / (sheets * stock.length() * stock.width()));
    }

    private static SheetPacker.Rectangle size(FlatPart part) {
        Box box = part.bounds();
        return new SheetPacker.Rectangle(box.width(), box.height());
    }

    private static NestedSheet.Place place(FlatPart part, SheetPacker.Spot spot) {
        return new NestedSheet.Place(part, spot.x(), spot.y(), spot.turned());
    }

    private static List<Layout> gathered(List<List<NestedSheet.Place>> sheets) {
        Map<String, Layout> alike = new LinkedHashMap<>();
        for (List<NestedSheet.Place> places : sheets) {
            StringBuilder key = new StringBuilder();
            places.forEach(p -> key.append(p.part().name())
                    .append(' ')
                    .append(p.x())
                    .append(' ')
                    .append(p.y())
                    .append(' ')
                    .append(p.turned())
                    .append(';'));
            alike.merge(key.toString(), new Layout(1, places), (a, b) -> new Layout(a.sheets() + 1, a.places()));
        }
        return List.copyOf(alike.values());
    }

    /** How many sheets are cut. */
    long sheets() {
        return layouts.stream().mapToLong(Layout::sheets).sum();
    }
}
