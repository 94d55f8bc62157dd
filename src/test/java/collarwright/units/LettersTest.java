package collarwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Seeds;
import java.math.BigInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LettersTest {
    private static final String ALPHABET = "ABCDFGHJKLMNPRTUVWXY";

    // Digests: NIST FIPS 180-4 example "abc" and the digest of no text, both from memory and the same in every tool.
    @ParameterizedTest
    @CsvSource({
        "abc, ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        "'', e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"
    })
    void of_knownDigest_takesItsFirstEightPairs(String text, String digest) {
        StringBuilder expected = new StringBuilder();
        for (int i = 0; i < 8; i++) {
            BigInteger pair = new BigInteger(digest.substring(4 * i, 4 * i + 4), 16);
            expected.append(ALPHABET.charAt(pair.mod(BigInteger.valueOf(20)).intValue()));
        }
        assertThat(Letters.of(text)).isEqualTo(expected.toString());
    }

    @Test
    void of_anyScript_isEightLettersThatLookLikeNoNumber() {
        Seeds.each(500, draw -> {
            String text = draw.numbers(draw.whole(0, 5), -1e3, 1e3) + "é漢字";
            assertThat(Letters.of(text)).matches("[ABCDFGHJKLMNPRTUVWXY]{8}").isEqualTo(Letters.of(text));
            assertThat(Letters.of(text + " ")).isNotEqualTo(Letters.of(text));
        });
    }
}
