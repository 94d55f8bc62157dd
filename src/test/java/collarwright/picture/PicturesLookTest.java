package collarwright.picture;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.collar.Direction;
import collarwright.collar.HoleContact;
import collarwright.collar.LeanEnvelope;
import collarwright.collar.Slot;
import collarwright.collar.StrutSection;
import collarwright.collar.SwungContact.Wall;
import collarwright.plan.Plan;
import collarwright.testing.ProjectFolder;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;

/** Paints every picture into target/look, and measures its letters. */
@Tag("look")
class PicturesLookTest {

    @TestFactory
    List<DynamicTest> pictures_haveReadableLettersWithRoomAroundThem() {
        return pictures().entrySet().stream()
                .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> look(e.getKey(), e.getValue())))
                .toList();
    }

    private static Map<String, Picture> pictures() {
        Map<String, Picture> pictures = new LinkedHashMap<>();
        add(pictures, "windbreak", TrialPlans.windbreak());
        add(pictures, "greenhouse", TrialPlans.greenhouse());
        Plan large = TrialPlans.dome(7, 11);
        pictures.put("large-dome", new DomePicture(large, 180));
        pictures.put("large-tiers", new TierPicture(large, 180));
        Plan sphere = TrialPlans.dome(16, 48);
        pictures.put("sphere-dome", new DomePicture(sphere, 180));
        pictures.put("sphere-tiers", new TierPicture(sphere, 180));
        var setup = collarwright.paper.TrialSetups.of(TrialPlans.windbreak()).get(0);
        pictures.put("stick", new StickPicture(setup, new Figures(collarwright.machining.ProgramUnits.MM), 180));
        envelopes(pictures);
        pictures.put("strut", new StrutPicture(true, 180));
        pictures.put("strut-bare", new StrutPicture(false, 88));
        return pictures;
    }

    private static void envelopes(Map<String, Picture> pictures) {
        Figures figures = new Figures(collarwright.machining.ProgramUnits.MM);
        Wall wall = new Wall(74.9, 80);
        StrutSection strut = StrutSection.round(40.2);
        Optional<Direction> need = Optional.of(new Direction(0.2, 0.075));
        pictures.put(
                "envelope",
                new EnvelopePicture(
                        LeanEnvelope.round(40.2, 43, wall),
                        new EnvelopePicture.Subject("43 mm", strut, 5.1, need),
                        figures));
        HoleContact slot = new HoleContact(new Slot(41, 46, false), wall, strut, 0);
        pictures.put(
                "envelope-slot",
                new EnvelopePicture(
                        LeanEnvelope.of(List.of(slot), 24).orElseThrow(),
                        new EnvelopePicture.Subject(
                                "41 mm wide, a slot 46 mm long along its axis", strut, 5.1, Optional.empty()),
                        figures));
    }

    private static void add(Map<String, Picture> pictures, String name, Plan plan) {
        Figures figures = new Figures(plan.job().shop().programUnits());
        var body = plan.job().hub().body();
        pictures.put(name + "-dome", new DomePicture(plan, 180));
        pictures.put(name + "-dome-narrow", new DomePicture(plan, 88));
        pictures.put(name + "-tiers", new TierPicture(plan, 180));
        pictures.put(name + "-tiers-narrow", new TierPicture(plan, 88));
        for (int i = 0; i < plan.book().patterns().size(); i++) {
            var pattern = plan.book().patterns().get(i);
            String part = name + "-" + pattern.id();
            pictures.put(part + "-hub", new HubPicture(plan, i, 88));
            pictures.put(part + "-ring", new RingPicture(body, pattern, 88));
            pictures.put(part + "-strip", new StripPicture(body, pattern, figures, 180));
            pictures.put(part + "-strip-narrow", new StripPicture(body, pattern, figures, 88));
            var subject = new SectionPicture.Subject(
                    body, plan.job().strut().stock().od(), pattern.holes().get(0));
            pictures.put(part + "-section", new SectionPicture(subject, figures, 88));
        }
    }

    private static void look(String name, Picture picture) {
        List<Written> texts = Bitmaps.save(
                picture, ProjectFolder.target().resolve("look/pictures").resolve(name + ".png"));
        assertThat(Bitmaps.spills(picture)).as("ink outside").isFalse();
        for (int i = 0; i < texts.size(); i++) {
            Written text = texts.get(i);
            assertThat(text.size() * 72 / 25.4).as("points of %s", text).isGreaterThanOrEqualTo(11);
            assertThat(text.x()).as("left of %s", text).isGreaterThanOrEqualTo(0);
            assertThat(text.x() + text.width()).as("right of %s", text).isLessThanOrEqualTo(picture.width());
            assertThat(text.top()).as("top of %s", text).isGreaterThanOrEqualTo(0);
            assertThat(text.bottom()).as("bottom of %s", text).isLessThanOrEqualTo(picture.height() + 1e-9);
            for (Written other : texts.subList(0, i)) {
                assertThat(text.touches(other, 0)).as("%s over %s", text, other).isFalse();
            }
        }
    }
}
