package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.junit.jupiter.api.Test;

class OffcutRowsTest {

    private static OffcutRows read(String text) {
        return OffcutRows.read("offcuts.csv", text.getBytes(StandardCharsets.UTF_8), Set.of());
    }

    @Test
    void read_eitherForm_isTheSamePiece() {
        CuttingSettings.Offcut piece = new CuttingSettings.Offcut("AB-1", "pvc-metric-40x3.0", 1234.5);
        String check = OffcutRows.check(piece);
        for (String text : new String[] {
            "offcut,stock,length (mm),check\r\nAB-1,pvc-metric-40x3.0,1234.500," + check + "\r\n",
            "offcut;stock;length (mm);check\r\nAB-1;pvc-metric-40x3.0;1234,500;" + check + "\r\n",
            "offcut;stock;length (mm);check\r\nAB-1;pvc-metric-40x3.0;1234.500;" + check + "\r\n"
        }) {
            OffcutRows rows = read(text);
            assertThat(rows.findings()).isEmpty();
            assertThat(rows.offcuts()).containsExactly(piece);
        }
    }

    @Test
    void read_pointAndComma_isNoLength() {
        assertThat(read("offcut;stock;length (mm)\nAB-1;pipe;1.234,5\n").findings())
                .extracting(Finding::code)
                .containsExactly(Code.OFFCUT_FILE);
    }
}
