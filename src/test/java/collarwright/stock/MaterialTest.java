package collarwright.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MaterialTest {
    @Test
    void material_values_areKept() {
        assertThat(new Material("pvc", "PVC-U", true, 1400).chlorinated()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.0, -1, Double.NaN, Double.NEGATIVE_INFINITY})
    void material_noDensity_isRefused(double density) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Material("pvc", "PVC-U", true, density));
    }

    @Test
    void material_strainLimit_isAboveNothing() {
        assertThat(new Material("pvc", "PVC-U", true, 1400).strainLimit()).isEqualTo(Material.USUAL_STRAIN_LIMIT);
        assertThatIllegalArgumentException().isThrownBy(() -> new Material("pvc", "PVC-U", true, 1400, 0));
    }

    @Test
    void material_noName_isRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Material(" ", "PVC-U", true, 1400));
        assertThatIllegalArgumentException().isThrownBy(() -> new Material("pvc", "", true, 1400));
    }
}
