package collarwright.picture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The measuring of ink finds what it is there to find. */
class BitmapsTest {

    private record Stroke(double length) implements Picture {
        @Override
        public double width() {
            return 20;
        }

        @Override
        public double height() {
            return 10;
        }

        @Override
        public String describe() {
            return "a stroke";
        }

        @Override
        public void paint(Sketch sketch) {
            sketch.line(Stroking.edge(), new Spot(5, 5), new Spot(5 + length, 5));
        }
    }

    @Test
    void strokeBeyondTheEdge_spills() {
        assertThat(Bitmaps.spills(new Stroke(17))).isTrue();
        assertThat(Bitmaps.spills(new Stroke(14))).isFalse();
    }
}
