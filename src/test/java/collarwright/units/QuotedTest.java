package collarwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class QuotedTest {

    @Test
    void text_controlCharacters_areWrittenAsNumbers() {
        assertThat(Quoted.text("a\u0007\u001b[31m\nb")).isEqualTo("\"a<U+0007><U+001B>[31m<U+000A>b\"");
        assertThat(Quoted.bare("a\u202eb\ud800")).isEqualTo("a<U+202E>b<U+D800>");
    }

    @Test
    void text_anyScript_isKept() {
        assertThat(Quoted.text("Größe 大きさ مقاس 😀")).isEqualTo("\"Größe 大きさ مقاس 😀\"");
    }

    @Test
    void text_long_isCutBetweenWholeCharacters() {
        assertThat(Quoted.bare("😀".repeat(61))).isEqualTo("😀".repeat(60) + "… (61 characters)");
    }

    @Test
    void number_isShownAsWritten() {
        assertThat(Quoted.number(120)).isEqualTo("120");
        assertThat(Quoted.number(2.5)).isEqualTo("2.5");
        assertThat(Quoted.number(Double.NaN)).isEqualTo("nan");
        assertThat(Quoted.number(Double.NEGATIVE_INFINITY)).isEqualTo("-inf");
    }
}
