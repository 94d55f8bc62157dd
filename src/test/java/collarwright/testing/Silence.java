package collarwright.testing;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.platform.commons.support.AnnotationSupport;

/**
 * Fails every test that prints to standard output or standard error. Found by JUnit through its service file, so no test
 * has to ask for it; a test that has to print says {@link MayPrint}.
 */
public final class Silence implements BeforeEachCallback, AfterEachCallback {
    private static final ExtensionContext.Namespace ROOM = ExtensionContext.Namespace.create(Silence.class);

    @Override
    public void beforeEach(ExtensionContext context) {
        if (!mayPrint(context)) {
            context.getStore(ROOM).put("kept", new Kept(System.out, System.err, new ByteArrayOutputStream()));
            PrintStream ear = new PrintStream(kept(context).heard(), true, StandardCharsets.UTF_8);
            System.setOut(ear);
            System.setErr(ear);
        }
    }

    @Override
    public void afterEach(ExtensionContext context) {
        Kept kept = kept(context);
        if (kept == null) {
            return;
        }
        System.setOut(kept.out());
        System.setErr(kept.err());
        String heard = kept.heard().toString(StandardCharsets.UTF_8);
        if (!heard.isEmpty()) {
            throw new AssertionError("a test prints nothing, but this one printed:\n" + heard);
        }
    }

    private static Kept kept(ExtensionContext context) {
        return context.getStore(ROOM).get("kept", Kept.class);
    }

    private static boolean mayPrint(ExtensionContext context) {
        return AnnotationSupport.isAnnotated(context.getElement(), MayPrint.class)
                || AnnotationSupport.isAnnotated(context.getTestClass(), MayPrint.class);
    }

    private record Kept(PrintStream out, PrintStream err, ByteArrayOutputStream heard) {}
}
