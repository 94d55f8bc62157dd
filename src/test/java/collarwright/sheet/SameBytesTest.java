package collarwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.drawing.ExampleCollars;
import collarwright.drawing.Sheet;
import collarwright.drawing.WrapTemplate;
import collarwright.units.Paper;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@ResourceLock(Resources.LOCALE)
@ResourceLock(Resources.TIME_ZONE)
class SameBytesTest {
    private final Locale locale = Locale.getDefault();
    private final TimeZone zone = TimeZone.getDefault();

    @AfterEach
    void restore() {
        Locale.setDefault(locale);
        TimeZone.setDefault(zone);
    }

    private static String fingerprint() throws NoSuchAlgorithmException {
        MessageDigest sum = MessageDigest.getInstance("SHA-256");
        WrapTemplate template = WrapTemplate.of(ExampleCollars.four());
        Sheet sheet = template.sheet();
        for (DxfFlavour flavour : DxfFlavour.values()) {
            for (DxfOutlines outlines : DxfOutlines.values()) {
                sum.update(DxfWriter.print(sheet, flavour, outlines).getBytes(StandardCharsets.UTF_8));
            }
        }
        sum.update(SvgWriter.print(sheet).getBytes(StandardCharsets.UTF_8));
        sum.update(PdfWriter.print(sheet, new PdfSettings(Paper.LETTER, 1.002, 0.999)));
        return HexFormat.of().formatHex(sum.digest());
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG", "hi-IN-u-nu-deva", "th-TH-u-ca-buddhist-nu-thai"})
    void print_anyLanguageAndZone_givesTheSameBytes(String language) throws NoSuchAlgorithmException {
        Locale.setDefault(Locale.ROOT);
        String plain = fingerprint();
        Locale.setDefault(Locale.forLanguageTag(language));
        TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));
        assertThat(fingerprint()).isEqualTo(plain);
    }

    @Test
    void print_again_givesTheSameBytes() throws NoSuchAlgorithmException {
        assertThat(fingerprint()).isEqualTo(fingerprint());
    }
}
