package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.dome.Base;
import collarwright.dome.Breakdown;
import collarwright.dome.Cut;
import collarwright.dome.DomeSettings;
import collarwright.dome.Foot;
import collarwright.dome.Form;
import collarwright.dome.Opening;
import collarwright.dome.SphereSettings;
import collarwright.dome.Subdivision;
import collarwright.dome.Up;
import collarwright.finding.JobException;
import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.strut.SizeRule;
import collarwright.testing.Checker;
import collarwright.testing.Jobs;
import collarwright.testing.NeedsChecker;
import collarwright.testing.ProjectFolder;
import collarwright.testing.Run;
import collarwright.testing.Seeds;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Domes of every kind, drawn at random, against the independent model, which lays the nets, fits the axes and cuts the
 * openings by other methods and is checked against published figures itself.
 */
class DomesAgainstModelTest {

    private static DomeSettings dome(Seeds draw) {
        boolean firstClass = draw.coin();
        Breakdown breakdown =
                firstClass ? new Breakdown(draw.whole(2, 6), 0) : new Breakdown(draw.whole(1, 4), draw.whole(0, 3));
        boolean arcs = breakdown.c() == 0 && draw.whole(0, 2) == 0;
        SphereSettings sphere = new SphereSettings(
                draw.oneOf(List.of(Base.values())),
                breakdown,
                arcs ? Subdivision.ARCS : Subdivision.CHORDS,
                draw.oneOf(List.of(Up.values())));
        Cut cut = draw.coin()
                ? new Cut.Height(draw.between(-0.7, 0.4))
                : new Cut.Tiers(StrictMath.max(1, StrictMath.min(sphere.tiers() - 1, draw.whole(2, 5))));
        Form form =
                draw.coin() ? Form.SPHERE : new Form(draw.between(0.6, 1.5), draw.oneOf(List.of(Form.Axis.values())));
        return new DomeSettings(sphere, cut, form, foot(draw), draw.coin(), openings(draw));
    }

    private static Foot foot(Seeds draw) {
        Foot.Plane plane = draw.oneOf(List.of(Foot.Plane.values()));
        return draw.oneOf(List.of(
                new Foot.Natural(),
                new Foot.Level(plane),
                new Foot.Riser(plane, draw.between(700, 2500), draw.coin())));
    }

    private static List<Opening> openings(Seeds draw) {
        if (draw.coin()) {
            return List.of();
        }
        Opening.Box box = new Opening.Box(
                draw.between(300, 1500), draw.between(900, 2500), draw.between(-StrictMath.PI, StrictMath.PI));
        return List.of(new Opening(List.of(), List.of(), Optional.of(box), List.of(), List.of()));
    }

    private static SizeRule size(Seeds draw) {
        return draw.oneOf(List.of(
                new SizeRule.Radius(draw.between(5000, 9000)),
                new SizeRule.Height(draw.between(6000, 9000)),
                new SizeRule.LongestStrut(draw.between(2500, 4000)),
                new SizeRule.PiecesPerStock(2, 6000, draw.between(0, 40), draw.between(1, 4))));
    }

    // Domes that no collar can be made for, such as those with a hub of one strut, are refused before they are planned.
    private static Optional<Plan> plan(Seeds draw) {
        Jobs jobs = Jobs.windbreak().dome(dome(draw)).size(size(draw));
        try {
            return Optional.of(Planner.plan((draw.coin() ? jobs : jobs.noTieHole()).job(), List.of()));
        } catch (JobException refused) {
            return Optional.empty();
        }
    }

    @Test
    @NeedsChecker(Checker.EZDXF) // the same Python
    void plan_drawnDome_agreesWithTheModel(@TempDir Path folder) {
        List<Plan> planned = new ArrayList<>();
        // A dome whose struts lean too far for every cutter has no patterns to compare.
        Seeds.each(
                80,
                draw -> plan(draw).filter(p -> !p.book().patterns().isEmpty()).ifPresent(plan -> {
                    Run model = model(folder.resolve("plan.json"), plan);
                    // Two angles a hair more apart than rounding: which of them are one type is a matter of taste.
                    if (model.err().contains("neither equal nor apart")) {
                        return;
                    }
                    planned.add(plan);
                    assertThat(model.exit())
                            .as("%s %s: %s", plan.job().dome(), plan.job().size(), model.out() + model.err())
                            .isZero();
                }));
        assertThat(planned).hasSizeGreaterThan(20);
    }

    private static Run model(Path file, Plan plan) {
        try {
            Files.write(file, PlanJson.write(plan, List.of()));
            return Run.of(List.of(
                    "/usr/bin/python3",
                    ProjectFolder.checkerScript("plan_model.py").toString(),
                    file.toString()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
