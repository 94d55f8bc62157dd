package collarwright.job;

import collarwright.finding.Code;
import collarwright.machining.CutMeans;
import collarwright.machining.CuttingData;
import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;
import collarwright.machining.StickRule;
import collarwright.machining.TubeCutter;
import collarwright.stock.Material;
import collarwright.tooling.SharingLimits;
import collarwright.units.Angles;
import collarwright.units.Length;
import collarwright.units.LengthUnit;
import collarwright.units.Quoted;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads the job's tables {@code [order]}, {@code [limits]} and {@code [shop]}. All of their keys may be left out. */
final class SettingsReader {

    /** The most domes of one order. Our choice: beyond it a zero too many is likelier. */
    private static final int MOST_DOMES = 10_000;
    /** The longest run of pieces that nobody measures. Our choice, no source. */
    private static final int MOST_CHECK_EVERY = 1000;
    /** Spares where the job does not say, in percent. Our choice, no source. */
    private static final double SPARES_PERCENT = 3;
    /** How far short a hole may come under {@code nearest} where the job does not say, in degrees. Our choice, no source. */
    private static final double NEAREST_BAND_DEGREES = 0.5;

    private SettingsReader() {}

    /**
     * Reads how much is made.
     *
     * @param table {@code [order]}; empty if it is not there
     * @return the order, or empty after findings
     */
    static Optional<Order> order(Optional<TableView> table) {
        if (table.isEmpty()) {
            return Optional.of(new Order(1, SPARES_PERCENT));
        }
        Given<Integer> domes = new Given<>(table.get().key("domes"), key -> key.wholeNumber(1, MOST_DOMES), 1);
        Given<Double> spares = new Given<>(table.get().key("spares"), KeyView::percent, SPARES_PERCENT);
        return domes.good() && spares.good() ? Optional.of(new Order(domes.value(), spares.value())) : Optional.empty();
    }

    /**
     * The limits with the band of the rule {@code nearest}, which stands in the same table.
     *
     * @param limits what checks hold the plan to
     * @param nearestBand an angle
     * @param shared how far hub types may differ that share a pattern
     */
    record Bounds(Limits limits, double nearestBand, SharingLimits shared) {}

    /**
     * Reads the limits.
     *
     * @param table {@code [limits]}; empty if it is not there
     * @return the limits, or empty after findings
     */
    static Optional<Bounds> limits(Optional<TableView> table) {
        Limits usual = Limits.DEFAULT;
        double band = Angles.radians(NEAREST_BAND_DEGREES);
        if (table.isEmpty()) {
            return Optional.of(new Bounds(usual, band, SharingLimits.USUAL));
        }
        TableView t = table.get();
        Given<Double> webStop = ratio(t.key("web-stop"), usual.webStop());
        Given<Double> webWarn = ratio(t.key("web-warn"), usual.webWarn());
        Given<Double> engagementStop = ratio(t.key("engagement-stop"), usual.engagementStop());
        Given<Double> engagementWarn = ratio(t.key("engagement-warn"), usual.engagementWarn());
        Given<Double> slack = new Given<>(t.key("slack-warn"), key -> key.angle(0, 90), usual.slackWarn());
        Given<Double> nearest = new Given<>(t.key("nearest-band"), key -> key.angle(0, 90), band);
        Given<Double> overtravel = new Given<>(
                t.key("overtravel"), key -> key.length(Length.Zero.ALLOWED).map(Length::mm), usual.overtravel());
        Given<Double> extraLean =
                new Given<>(t.key("extra-lean"), key -> key.angle(0, 20), SharingLimits.USUAL.extraLean());
        Given<Double> miss = new Given<>(
                t.key("miss"), key -> key.length(Length.Zero.ALLOWED).map(Length::mm), SharingLimits.USUAL.miss());
        Given<Double> clearance = new Given<>(
                t.key("working-clearance"),
                key -> key.length(Length.Zero.ALLOWED).map(Length::mm),
                usual.workingClearance());
        boolean ordered = ordered(webStop, webWarn);
        ordered = ordered(engagementStop, engagementWarn) && ordered;
        if (!ordered
                || !slack.good()
                || !nearest.good()
                || !overtravel.good()
                || !extraLean.good()
                || !miss.good()
                || !clearance.good()) {
            return Optional.empty();
        }
        Limits limits = new Limits(
                webStop.value(),
                webWarn.value(),
                engagementStop.value(),
                engagementWarn.value(),
                slack.value(),
                overtravel.value(),
                clearance.value());
        return Optional.of(new Bounds(limits, nearest.value(), new SharingLimits(extraLean.value(), miss.value())));
    }

    private static Given<Double> ratio(KeyView key, double usual) {
        return new Given<>(key, k -> k.number(0, 10), usual);
    }

    private static boolean ordered(Given<Double> stop, Given<Double> warn) {
        if (!stop.good() || !warn.good()) {
            return false;
        }
        if (stop.value() <= warn.value()) {
            return true;
        }
        KeyView key = warn.key().present() ? warn.key() : stop.key();
        key.stop(
                Code.JOB_CONFLICT,
                "the stop limit at most as high as the warning limit",
                "stop at " + stop.value() + ", warn at " + warn.value(),
                "raise the warning limit or lower the stop limit");
        return false;
    }

    /**
     * Reads the shop.
     *
     * @param table {@code [shop]}; empty if it is not there
     * @param profiles know machines and cutting data
     * @param materials what collars and struts are made of
     * @param bare the job's own unit, for programs too where the job does not say
     * @return the shop, or empty after findings
     */
    static Optional<Shop> shop(Optional<TableView> table, Profiles profiles, Materials materials, LengthUnit bare) {
        Optional<Placed> material = materials.collar();
        Optional<Machine> machine = Optional.empty();
        ProgramUnits usual = bare.imperial() ? ProgramUnits.INCH : ProgramUnits.MM;
        Optional<ProgramUnits> units = Optional.of(usual);
        Optional<Shop.Batch> batch = Optional.of(Shop.Batch.USUAL);
        if (table.isPresent()) {
            KeyView machineKey = table.get().key("machine");
            machine = machineKey.present() ? collarMachine(machineKey, profiles) : profiles.machine("press");
            machine = machine.filter(m -> !burnt(m, machineKey, material));
            Map<String, ProgramUnits> words = new LinkedHashMap<>();
            words.put("mm", ProgramUnits.MM);
            words.put("in", ProgramUnits.INCH);
            words.put("inch", ProgramUnits.INCH);
            KeyView unitsKey = table.get().key("program-units");
            units = unitsKey.present() ? unitsKey.word(words) : units;
            batch = batch(table.get());
            table.get().later("laser", "take it out; templates are printed");
            table.get().later("plasma", "take it out; templates are printed");
        } else {
            machine = profiles.machine("press");
        }
        Optional<CuttingData> cutting = material.flatMap(m -> cutting(m, profiles));
        Optional<ShopTimes> times = TimesReader.read(table);
        Optional<StrutMachineReader.Found> bed = new StrutMachineReader(profiles).read(table, materials);
        Optional<StripReader.Found> strip =
                StripReader.read(materials.strip(), profiles, material.map(Placed::material), machine);
        boolean settings = batch.isPresent() && times.isPresent() && bed.isPresent() && strip.isPresent();
        return machine.isPresent() && units.isPresent() && cutting.isPresent() && settings
                ? Optional.of(new Shop(
                        machine.get(),
                        units.get(),
                        cutting.get(),
                        batch.get(),
                        times.get(),
                        bed.get().bed(),
                        strip.get().strip()))
                : Optional.empty();
    }

    private static boolean burnt(Machine machine, KeyView key, Optional<Placed> material) {
        Optional<CutMeans> burns = machine.tube().map(TubeCutter::process).filter(CutMeans::burns);
        Optional<Material> gas = material.map(Placed::material).filter(Material::chlorinated);
        if (burns.isEmpty() || gas.isEmpty()) {
            return false;
        }
        key.stop(
                Code.LASER_PVC,
                "a material that a laser or a plasma torch may cut",
                gas.get().title() + ", whose fumes are toxic and corrosive, on a machine that cuts with "
                        + burns.get().word(),
                "drill it: name a press or a rotary mill",
                "or take another material");
        return true;
    }

    private static Optional<Shop.Batch> batch(TableView table) {
        Map<String, StickRule> words = new LinkedHashMap<>();
        words.put("mixed", StickRule.MIXED);
        words.put("one-pattern", StickRule.ONE_PATTERN);
        Shop.Batch usual = Shop.Batch.USUAL;
        Given<StickRule> sticks = new Given<>(table.key("sticks"), key -> key.word(words), usual.sticks());
        Given<Integer> checkEvery =
                new Given<>(table.key("check-every"), key -> key.wholeNumber(1, MOST_CHECK_EVERY), usual.checkEvery());
        return sticks.good() && checkEvery.good()
                ? Optional.of(new Shop.Batch(sticks.value(), checkEvery.value()))
                : Optional.empty();
    }

    /**
     * What collars and struts are made of.
     *
     * @param collar the collar's material; empty if it could not be read
     * @param strut the struts' material; empty if it could not be read
     * @param tied whether struts have tie holes, as far as it could be read
     * @param strip {@code [strip]}; empty if collars are cut from pipe
     */
    record Materials(Optional<Placed> collar, Optional<Placed> strut, boolean tied, Optional<TableView> strip) {}

    private static Optional<Machine> collarMachine(KeyView key, Profiles profiles) {
        Optional<Machine> machine = machine(key, profiles);
        if (machine.filter(m -> m.kind() == Machine.Kind.BED || m.kind() == Machine.Kind.FLAT)
                .isPresent()) {
            key.stop(
                    Code.JOB_CONFLICT,
                    "a machine that drills collars",
                    Quoted.text(machine.get().name())
                            + (machine.get().kind() == Machine.Kind.BED
                                    ? ", a bed for the ends of struts"
                                    : ", a flat machine for strips"),
                    machine.get().kind() == Machine.Kind.BED
                            ? "write it as strut-machine, and name a press or a rotary machine here"
                            : "write it as machine under [strip], and name a press here");
            return Optional.empty();
        }
        return machine;
    }

    /**
     * A material and the key that brought it.
     *
     * @param key the key
     * @param material the material
     */
    record Placed(KeyView key, Material material) {}

    static Optional<Machine> machine(KeyView key, Profiles profiles) {
        Optional<String> name = key.text();
        Optional<Machine> machine = name.flatMap(profiles::machine);
        if (name.isPresent() && machine.isEmpty()) {
            StockReader.unknown(key, "a machine", name.get(), new StockReader.Known(profiles, Profiles.Kind.MACHINE));
        }
        return machine;
    }

    static Optional<CuttingData> cutting(Placed placed, Profiles profiles) {
        String name = placed.material().name();
        String cutting = profiles.material(name).map(MaterialProfile::cutting).orElse(name);
        Optional<CuttingData> data = profiles.cutting(cutting);
        if (data.isEmpty()) {
            placed.key()
                    .stop(
                            Code.PROFILE_UNKNOWN,
                            "a material with cutting data",
                            name + ", whose cutting data would be called " + cutting,
                            "add [[cutting]] with name = \"" + cutting + "\" to a profile of your own");
        }
        return data;
    }
}
