package collarwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectMethod;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.platform.launcher.core.LauncherConfig;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.junit.platform.launcher.listeners.SummaryGeneratingListener;

class SilenceTest {
    @Test
    void test_thatPrints_failsWithWhatItPrinted() {
        assertThat(failuresOf("printsToOut")).singleElement().asString().contains("out of place");
        assertThat(failuresOf("printsToErr")).singleElement().asString().contains("out of place");
    }

    @Test
    @MayPrint
    void test_thatMayPrint_passes() {
        assertThat(failuresOf("mayPrint")).isEmpty();
    }

    @Test
    void test_thatIsSilent_passes() {
        assertThat(failuresOf("silent")).isEmpty();
    }

    private static List<String> failuresOf(String method) {
        var listener = new SummaryGeneratingListener();
        // Without the listener of this run, which would write its line twice.
        var config = LauncherConfig.builder()
                .enableTestExecutionListenerAutoRegistration(false)
                .build();
        LauncherFactory.create(config)
                .execute(
                        LauncherDiscoveryRequestBuilder.request()
                                .selectors(selectMethod(Example.class, method))
                                .build(),
                        listener);
        assertThat(listener.getSummary().getTestsStartedCount()).isEqualTo(1);
        return listener.getSummary().getFailures().stream()
                .map(failure -> failure.getException().getMessage())
                .toList();
    }

    /** Run from here only: surefire leaves nested classes out. */
    static class Example {
        @Test
        void printsToOut() {
            System.out.println("out of place");
        }

        @Test
        void printsToErr() {
            System.err.println("out of place");
        }

        @Test
        @MayPrint
        void mayPrint() {
            System.out.print(" ");
        }

        @Test
        void silent() {
            assertThat(Example.class).isNotNull();
        }
    }
}
