package collarwright.pack;

import collarwright.job.Job;
import collarwright.job.LabelSheet;
import collarwright.kit.Bundle;
import collarwright.kit.CardWords;
import collarwright.kit.SiteWork;
import collarwright.kit.StepCard;
import collarwright.paper.LabelPages;
import collarwright.plan.PartNames;
import collarwright.plan.Plan;
import java.io.IOException;
import java.util.Optional;

/** Writes the site pack into {@code plan.json}: bundles, step cards, labels. Connections stand there as members. */
final class SiteJson {

    private final JsonOut out;
    private final Plan plan;
    private final PartNames names;
    private final CardWords words;

    SiteJson(JsonOut out, Plan plan) {
        this.out = out;
        this.plan = plan;
        this.names = PartNames.of(plan);
        this.words = new CardWords(plan);
    }

    void write() throws IOException {
        Optional<SiteWork> work = SiteWork.of(plan);
        if (work.isEmpty()) {
            return;
        }
        Job job = plan.job();
        out.object("site", () -> {
            out.number("bundleWeightLimitKg", job.site().bundleKg());
            out.rows("bundles", work.get().kit().perDome(), this::bundle);
            out.rows("spares", work.get().kit().spares(), this::bundle);
            out.rows("cards", work.get().cards(), this::card);
            out.rows("packUp", work.get().packUp(), step -> {
                out.whole("card", step.card().number());
                out.texts("full", step.full());
            });
            labels(work.get());
        });
    }

    private void bundle(Bundle bundle) throws IOException {
        out.text("id", bundle.id());
        out.text("what", SiteFiles.what(bundle.kind()));
        out.text("part", bundle.part());
        out.whole("pieces", bundle.pieces());
        Optional<collarwright.kit.Stripes> stripes = SiteFiles.stripes(plan, bundle);
        if (stripes.isPresent()) {
            out.whole("stripes", stripes.get().number());
        }
        if (bundle.kg().isPresent()) {
            out.number("weightKg", bundle.kg().getAsDouble());
        }
    }

    private void card(StepCard card) throws IOException {
        out.whole("n", card.number());
        out.texts("hubs", card.hubs().stream().map(names::node).toList());
        out.texts(
                "members",
                card.steps().stream().map(s -> names.member(s.member())).toList());
        out.texts("words", words.lines(card));
    }

    private void labels(SiteWork work) throws IOException {
        LabelSheet sheet = LabelPages.sheet(plan);
        out.object("labels", () -> {
            out.whole("perDome", work.labels().perDome().size());
            out.whole("spares", work.labels().spares().size());
            out.text("paper", sheet.paper().title());
            out.whole("columns", sheet.columns());
            out.whole("rows", sheet.rows());
            out.number("widthMm", sheet.width());
            out.number("heightMm", sheet.height());
            out.number("leftMm", sheet.left());
            out.number("topMm", sheet.top());
            out.number("pitchXMm", sheet.pitchX());
            out.number("pitchYMm", sheet.pitchY());
            out.number("nudgeXMm", sheet.nudgeX());
            out.number("nudgeYMm", sheet.nudgeY());
        });
    }
}
