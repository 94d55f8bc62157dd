package collarwright.pack;

import collarwright.collar.Fix;
import collarwright.collar.HubSettings;
import collarwright.collar.TrialPiece;
import collarwright.cutting.SheetPacker;
import collarwright.geometry.Interval;
import collarwright.job.Job;
import collarwright.job.Limits;
import collarwright.job.PlateSettings;
import collarwright.job.StripSettings;
import collarwright.machining.TubeCutter;
import collarwright.stock.RoundStock;
import collarwright.strut.EndPlugs;
import collarwright.strut.EndWork;
import collarwright.strut.SizeBins;
import collarwright.strut.SizeRule;
import collarwright.strut.StrutSettings;
import collarwright.strut.TieHole;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.tooling.DrillingSettings;
import collarwright.tooling.Fit;
import java.io.IOException;
import java.util.Locale;

/** Writes the inputs of {@code plan.json}: all that the plan follows from, resolved, so that it can be worked out again. */
final class InputsJson {

    private final JsonOut out;

    InputsJson(JsonOut out) {
        this.out = out;
    }

    void write(Job job) throws IOException {
        out.object("inputs", () -> {
            new DomeJson(out).write(job.dome());
            size(job.size());
            strut(job.strut());
            hub(job.hub());
            drilling(job.drilling());
            out.row("order", () -> {
                out.whole("domes", job.order().domes());
                out.number("sparesPercent", job.order().sparesPercent());
            });
            limits(job.limits());
            out.text("machine", job.shop().machine().name());
            if (job.shop().machine().tube().isPresent()) {
                tube(job.shop().machine().tube().get());
            }
            if (job.shop().strutBed().isPresent()) {
                out.text("strutMachine", job.shop().strutBed().get().machine().name());
            }
            out.text("programUnits", job.shop().programUnits().symbol());
            if (job.sheet().layers().isPresent()) {
                out.text("layers", job.sheet().layers().get().name());
            }
            if (job.sheet().insideTemplates()) {
                out.flag("insideTemplates", true);
            }
            if (job.sheet().plates().isPresent()) {
                plates(job.sheet().plates().get());
            }
            if (job.shop().strip().isPresent()) {
                strip(job.shop().strip().get());
            }
        });
    }

    private void tube(TubeCutter tube) throws IOException {
        out.row("tubeCutter", () -> {
            out.text("process", tube.process().word());
            out.number("kerfMm", tube.kerf());
            out.number("pierceSeconds", tube.start().pierceSeconds());
            out.number("leadInMm", tube.start().leadIn());
            out.number("overcutMm", tube.start().overcut());
            out.number("pierceHeightMm", tube.heights().pierce());
            out.number("cutHeightMm", tube.heights().cut());
            out.number("largestOdMm", tube.limits().largestOd());
            out.flag("partsOff", tube.limits().parts());
            out.whole("mostLines", tube.limits().lines());
            if (tube.start().markSeconds() > 0) {
                out.number("markSeconds", tube.start().markSeconds());
            }
        });
    }

    private void plates(PlateSettings plates) throws IOException {
        out.row("plates", () -> {
            out.number("boreMm", plates.sizes().bore());
            out.number("pinMm", plates.sizes().pin());
            if (plates.sizes().diameter().isPresent()) {
                out.number("diameterMm", plates.sizes().diameter().get());
            }
            out.text("material", plates.material().name());
            out.text("cut", plates.process().word());
            out.number("kerfInsideMm", plates.kerf().inside());
            out.number("kerfOutsideMm", plates.kerf().outside());
            out.number("leadInMm", plates.kerf().leadIn());
            out.whole("count", plates.counts().plates());
            if (plates.counts().saddles() > 0) {
                out.whole("saddles", plates.counts().saddles());
            }
            stock(plates.sheet());
        });
    }

    private void stock(SheetPacker.Stock sheet) throws IOException {
        out.number("sheetLengthMm", sheet.length());
        out.number("sheetWidthMm", sheet.width());
        out.number("gapMm", sheet.gap());
        out.number("marginMm", sheet.margin());
        out.flag("turn", sheet.turn());
    }

    private void strip(StripSettings strip) throws IOException {
        out.row("strip", () -> {
            out.text("joint", strip.joint().kind().word());
            out.number("jointLengthMm", strip.joint().length());
            out.text("cut", strip.process().word());
            out.number("kerfMm", strip.kerf());
            out.number("leadInMm", strip.leadIn());
            if (strip.machine().isPresent()) {
                out.text("machine", strip.machine().get().name());
            }
            if (strip.nest().isPresent()) {
                out.row("nest", () -> stock(strip.nest().get()));
            }
        });
    }

    private void size(SizeRule size) throws IOException {
        out.row("size", () -> {
            out.text("rule", word(size));
            if (!(size instanceof SizeRule.AsDrawn)) {
                out.number("valueMm", size.value());
            }
            if (size instanceof SizeRule.PiecesPerStock pieces) {
                out.whole("pieces", pieces.pieces());
                out.number("stockLengthMm", pieces.stick());
                out.number("trimMm", pieces.trim());
                out.number("kerfMm", pieces.kerf());
            }
        });
    }

    private static String word(SizeRule size) {
        if (size instanceof SizeRule.Radius) {
            return "radius";
        }
        if (size instanceof SizeRule.FloorDiameter) {
            return "floor-diameter";
        }
        if (size instanceof SizeRule.AsDrawn) {
            return "as-drawn";
        }
        if (size instanceof SizeRule.Height) {
            return "height";
        }
        return size instanceof SizeRule.LongestStrut ? "longest-strut" : "pieces-per-stock";
    }

    private void strut(StrutSettings strut) throws IOException {
        RoundStock stock = strut.stock();
        out.object("strut", () -> {
            stock(stock);
            interval("od", "Mm", stock.od());
            out.flag("measured", stock.odMeasured());
            out.number("strainLimitPercent", 100 * stock.material().strainLimit());
            if (strut.bins().isPresent()) {
                SizeBins bins = strut.bins().get();
                out.numbers(
                        "binLimitsMm",
                        bins.limits().stream().mapToDouble(d -> d).toArray());
                if (bins.chosen().isPresent()) {
                    out.whole("bin", bins.chosen().get());
                }
            }
            if (strut.tieHole().isPresent()) {
                TieHole hole = strut.tieHole().get();
                out.row("tieHole", () -> {
                    out.number("diameterMm", hole.diameter());
                    out.number("fromEndMm", hole.fromEnd());
                });
            }
            ends(strut.endWork());
        });
    }

    private void ends(EndWork work) throws IOException {
        if (work.flat().isPresent()) {
            out.number("flatLengthMm", work.flat().get().length());
        }
        if (work.plugs().isPresent()) {
            EndPlugs plugs = work.plugs().get();
            out.row("plugs", () -> {
                out.number("lengthMm", plugs.length());
                out.number("diameterMm", plugs.diameter());
            });
        }
        if (work.caps()) {
            out.flag("caps", true);
        }
    }

    private void hub(HubSettings hub) throws IOException {
        RoundStock collar = hub.collar();
        out.object("collar", () -> {
            stock(collar);
            out.number("outerRadiusMm", collar.outerRadius());
            interval("wall", "Mm", hub.body().wall());
            out.number("rimsMm", hub.rims());
            out.number("widthMm", hub.width());
            out.flag("odMeasured", collar.odMeasured());
            out.flag("wallMeasured", collar.wallMeasured());
            out.number("outOfRoundMm", collar.outOfRound());
            if (hub.trialPiece().isPresent()) {
                trialPiece(hub.trialPiece().get(), hub.body().bearing());
            }
        });
        out.object("ring", () -> {
            stock(hub.ring());
            out.number("radiusMm", hub.ring().outerRadius());
            out.number("widthMm", hub.ringWidth());
        });
        out.number("endGapMm", hub.endGap());
        out.text("fix", hub.fix() == Fix.TIE ? "tie" : "pin");
        out.text("heights", hub.heights().name().toLowerCase(Locale.ROOT));
    }

    // The bearing wall as it is counted with: never thicker than this collar's own.
    private void trialPiece(TrialPiece piece, Interval bearing) throws IOException {
        out.object("trialPiece", () -> {
            out.text("name", piece.name());
            out.text("stock", piece.stock());
            out.text("material", piece.material());
            interval("bearingWall", "Mm", bearing);
            interval("oversize", "Mm", piece.oversize());
            out.whole("readings", piece.readings());
            out.degrees("rmsDeg", piece.rms());
        });
    }

    private void stock(RoundStock stock) throws IOException {
        out.text("stock", stock.name());
        out.text("title", stock.title());
        out.text("material", stock.material().name());
        out.text("source", stock.source());
    }

    private void interval(String key, String unit, Interval size) throws IOException {
        out.number(key + "Min" + unit, size.min());
        out.number(key + unit, size.nominal());
        out.number(key + "Max" + unit, size.max());
    }

    private void drilling(DrillingSettings drilling) throws IOException {
        out.text("fit", drilling.fit() == Fit.REACH ? "reach" : "nearest");
        out.text("patterns", drilling.shared().isPresent() ? "shared" : "exact");
        out.degrees("nearestBandDeg", drilling.nearestBand());
        out.number("leastClearanceMm", drilling.leastClearance());
        if (drilling.mostCutters().isPresent()) {
            out.whole("mostCutters", drilling.mostCutters().get());
        }
        if (drilling.flip()) {
            out.flag("flip", true);
        }
        out.rows("cutters", drilling.cutters(), this::cutter);
        if (drilling.boring().endMills().stream().anyMatch(c -> c.kind() == CutterKind.END_MILL)) {
            out.text(
                    "bore",
                    switch (drilling.boring().rule()) {
                        case NO_FIT -> "no-fit";
                        case ALWAYS -> "always";
                        case NEVER -> "never";
                    });
            out.rows("endMills", drilling.boring().endMills(), this::endMill);
        }
    }

    private void cutter(Cutter cutter) throws IOException {
        out.text("id", cutter.id());
        out.text("kind", kind(cutter.kind()));
        out.text("marked", cutter.marked());
        out.text("rack", cutter.rack());
        out.number("sizeMm", cutter.size());
        interval("asDrilled", "Mm", cutter.asDrilled());
        out.flag("measured", cutter.measured());
        out.number("leadMm", cutter.lead());
        out.number("depthMm", cutter.depth());
        out.number("minRpm", cutter.minRpm());
        out.number("maxRpm", cutter.maxRpm());
    }

    private static String kind(CutterKind kind) {
        return switch (kind) {
            case TWIST -> "twist-drill";
            case HOLE_SAW -> "hole-saw";
            case END_MILL -> "end-mill";
            case TUBE_CUTTER -> "tube-cutter";
        };
    }

    private void endMill(Cutter cutter) throws IOException {
        cutter(cutter);
        out.whole("teeth", cutter.teeth());
    }

    private void limits(Limits limits) throws IOException {
        out.row("limits", () -> {
            out.number("webStopDiameters", limits.webStop());
            out.number("webWarnDiameters", limits.webWarn());
            out.number("engagementStopDiameters", limits.engagementStop());
            out.number("engagementWarnDiameters", limits.engagementWarn());
            out.degrees("slackWarnDeg", limits.slackWarn());
            out.number("overtravelMm", limits.overtravel());
            out.number("workingClearanceMm", limits.workingClearance());
        });
    }
}
