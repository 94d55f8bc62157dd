package collarwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.testing.CanonicalMove.Kind;
import collarwright.testing.CanonicalMove.Spindle;
import java.util.List;
import org.junit.jupiter.api.Test;

@NeedsChecker(Checker.RS274)
class Rs274Test {
    private static final Rs274 SHOP = new Rs274(List.of(new Rs274.Tool(1, 50, 5), new Rs274.Tool(2, 62.5, 9)));

    private static final String PECKS = """
            N10 G21 G17 G90 G94 G40 G49 G80
            N20 T1 M6
            N30 G43 H1
            N40 S2000 M3
            N50 G0 A60.5
            N60 G0 X10 Y0 Z25
            N70 G98 G83 X20 Z-6 R2 Q3 F100
            N80 G80
            N90 G4 P1.5
            N100 M5
            N110 M30
            """;

    @Test
    void pecks_areTakenApart() {
        List<CanonicalMove> moves = SHOP.read(PECKS).movesOrFail();

        List<CanonicalMove> feeds =
                moves.stream().filter(move -> move.kind() == Kind.FEED).toList();
        assertThat(feeds).extracting(CanonicalMove::z).containsExactly(-1.0, -4.0, -6.0);
        assertThat(feeds).allSatisfy(move -> {
            assertThat(move.block()).hasValue(70);
            assertThat(move.x()).isEqualTo(20);
            assertThat(move.a()).isEqualTo(60.5);
            assertThat(move.inch()).isFalse();
            assertThat(move.state()).isEqualTo(new CanonicalMove.State(100, false, Spindle.CLOCKWISE, 2000, 1, 50));
        });
        // It backs out to R after each peck and comes down again to 0.254 mm (0.010 in) above the last depth.
        assertThat(moves.stream()
                        .filter(move ->
                                move.kind() == Kind.TRAVERSE && move.block().getAsInt() == 70))
                .extracting(CanonicalMove::z)
                .containsExactly(25.0, 2.0, 2.0, -0.746, 2.0, -3.746, 25.0);
    }

    @Test
    void calls_otherThanMoves_areKept() {
        assertThat(SHOP.read(PECKS).calls("DWELL")).singleElement().satisfies(dwell -> {
            assertThat(dwell.block()).hasValue(90);
            assertThat(dwell.words()).containsExactly("1.5000");
        });
    }

    @Test
    void inches_stayInches() {
        List<CanonicalMove> moves = SHOP.read("""
                N10 G20 G90 G95
                N20 T2 M6
                N30 G43 H2
                N40 S300 M4
                N50 G0 X1 Y0 Z1 A-90
                N60 G1 Z-.25 F.004
                N70 M30
                """).movesOrFail();

        CanonicalMove last = moves.get(moves.size() - 1);
        assertThat(last.inch()).isTrue();
        assertThat(last.unitMm()).isEqualTo(25.4);
        assertThat(last.z()).isEqualTo(-0.25);
        assertThat(last.a()).isEqualTo(-90);
        assertThat(last.state().feedPerRevolution()).isTrue();
        assertThat(last.state().feed()).isEqualTo(0.004);
        assertThat(last.state().spindle()).isEqualTo(Spindle.COUNTERCLOCKWISE);
        assertThat(last.state().lengthOffset()).isCloseTo(62.5 / 25.4, within(5e-5));
    }

    @Test
    void brokenPrograms_areRefusedWithTheReason() {
        assertThat(SHOP.read("N10 G21\nN20 G1 X10\nN30 M2\n").complaint()).contains("zero feed rate", "N20 G1 X10");
        assertThat(SHOP.read("N10 G21\nN20 T7 M6\nN30 M2\n").accepted()).isFalse();
        assertThat(SHOP.read("N10 G21 G81 X1 Z-1\nN20 M2\n").accepted()).isFalse();
        assertThat(SHOP.read("N10 G0 X\nN20 M2\n").accepted()).isFalse();
        // It runs off the end of a program that was cut short with exit code 0.
        assertThat(SHOP.read("N10 G21\nN20 G0 X1\n").accepted()).isFalse();
    }
}
