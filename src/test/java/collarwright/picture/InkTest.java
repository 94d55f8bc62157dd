package collarwright.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.List;
import org.junit.jupiter.api.Test;

class InkTest {

    @Test
    void inks_keepTheirOrderOnAGreyPrinter() {
        // Luma weights of Rec. ITU-R BT.601: 0.299, 0.587, 0.114 (from memory).
        List<Double> greys = List.of(Ink.values()).stream()
                .map(Ink::color)
                .map((Color c) -> 0.299 * c.getRed() + 0.587 * c.getGreen() + 0.114 * c.getBlue())
                .toList();
        for (int i = 1; i < greys.size(); i++) {
            assertThat(greys.get(i) - greys.get(i - 1)).as("step %d", i).isGreaterThan(8);
        }
    }

    @Test
    void hex_hasSixDigits() {
        assertThat(Ink.DATUM.hex()).isEqualTo("#14477a");
        assertThat(Ink.PAPER.hex()).isEqualTo("#ffffff");
    }
}
