package collarwright.job;

import collarwright.finding.Code;
import collarwright.units.Decimals;
import collarwright.units.Length;
import collarwright.units.Quoted;
import java.util.Optional;

/**
 * Reads the job's table {@code [sheet]}: {@code paper-thickness}, {@code hairline}, {@code print-correction} with
 * {@code bar-x} and {@code bar-y}, {@code layers}, {@code inside-templates}, and {@code csv} with {@code separator} and {@code decimal}. All of its keys may be left out.
 */
final class SheetReader {
    private static final String SET_RIGHT = "set the printer to 100 %, no scaling, print again and measure the bars";

    private SheetReader() {}

    /**
     * Reads how templates are printed.
     *
     * @param table {@code [sheet]}; empty if it is not there
     * @param profiles know layers
     * @return the settings, or empty after findings
     */
    static Optional<SheetSettings> read(Optional<TableView> table, Profiles profiles) {
        SheetSettings usual = SheetSettings.USUAL;
        if (table.isEmpty()) {
            return Optional.of(usual);
        }
        Given<Double> paper = new Given<>(
                table.get().key("paper-thickness"),
                key -> within(
                        key, Length.Zero.ALLOWED, 0, SheetSettings.THICKEST, "measure ten sheets and divide by 10"),
                usual.paperThickness());
        Given<Double> hairline = new Given<>(
                table.get().key("hairline"),
                key -> within(
                        key, Length.Zero.REFUSED, SheetSettings.THINNEST, SheetSettings.WIDEST, "0.1 mm is usual"),
                usual.hairline());
        KeyView correction = table.get().key("print-correction");
        Optional<TableView> bars = correction.table();
        Optional<Double> barX = bar(bars, "bar-x");
        Optional<Double> barY = bar(bars, "bar-y");
        boolean corrected = bars.isPresent() || !correction.present();
        Optional<CsvForm> csv = csv(table.get().key("csv"));
        KeyView layersKey = table.get().key("layers");
        Optional<CutLayers> layers = layers(layersKey, profiles);
        Given<Boolean> inside = new Given<>(table.get().key("inside-templates"), KeyView::flag, false);
        boolean good = corrected && paper.good() && hairline.good() && inside.good();
        good &= layers.isPresent() || !layersKey.present();
        if (!good || barX.isEmpty() || barY.isEmpty() || csv.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new SheetSettings(paper.value(), barX.get(), barY.get(), hairline.value(), csv.get())
                .with(layers, inside.value()));
    }

    private static Optional<CutLayers> layers(KeyView key, Profiles profiles) {
        Optional<String> name = key.text();
        Optional<CutLayers> layers = name.flatMap(profiles::cutLayers);
        if (name.isPresent() && layers.isEmpty()) {
            StockReader.unknown(
                    key, "layers of cut files", name.get(), new StockReader.Known(profiles, Profiles.Kind.CUT_LAYERS));
        }
        return layers;
    }

    // Empty after a finding only.
    private static Optional<CsvForm> csv(KeyView key) {
        Optional<TableView> table = key.table();
        if (table.isEmpty()) {
            return key.present() ? Optional.empty() : Optional.of(CsvForm.USUAL);
        }
        Given<Character> separator =
                new Given<>(table.get().key("separator"), k -> sign(k, ",", ";"), CsvForm.USUAL.separator());
        Given<Character> decimal =
                new Given<>(table.get().key("decimal"), k -> sign(k, ".", ","), CsvForm.USUAL.decimal());
        if (!separator.good() || !decimal.good()) {
            return Optional.empty();
        }
        if (separator.value().equals(decimal.value())) {
            key.stop(
                    Code.JOB_OUT_OF_RANGE,
                    "a separator that is not the decimal sign",
                    "a comma for both",
                    "separator = \";\" is usual where decimals stand after a comma");
            return Optional.empty();
        }
        return Optional.of(new CsvForm(separator.value(), decimal.value()));
    }

    private static Optional<Character> sign(KeyView key, String usual, String other) {
        Optional<String> text = key.text();
        if (text.isPresent() && !text.get().equals(usual) && !text.get().equals(other)) {
            String both = Quoted.text(usual) + " or " + Quoted.text(other);
            key.stop(
                    Code.JOB_UNKNOWN_WORD, "one of the signs " + both, Quoted.text(text.get()), "write one of the two");
            return Optional.empty();
        }
        return text.map(t -> t.charAt(0));
    }

    // Empty after a finding only.
    private static Optional<Double> bar(Optional<TableView> bars, String name) {
        if (bars.isEmpty()) {
            return Optional.of(SheetSettings.BAR);
        }
        double least = SheetSettings.SHORTEST_BAR;
        double most = SheetSettings.LONGEST_BAR;
        Given<Double> bar = new Given<>(
                bars.get().key(name),
                key -> within(key, Length.Zero.REFUSED, least, most, SET_RIGHT),
                SheetSettings.BAR);
        return bar.good() ? Optional.of(bar.value()) : Optional.empty();
    }

    private static Optional<Double> within(KeyView key, Length.Zero zero, double least, double most, String cure) {
        Optional<Double> length = key.length(zero).map(Length::mm);
        if (length.isPresent() && (length.get() < least || length.get() > most)) {
            String from = least > 0 ? Decimals.trimmed(least, 3) + " to " : "at most ";
            key.stop(Code.JOB_OUT_OF_RANGE, from + Decimals.trimmed(most, 1) + " mm", key.shown(), cure);
            return Optional.empty();
        }
        return length;
    }
}
