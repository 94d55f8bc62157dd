package collarwright.pack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.extension.AnnotatedElementContext;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.io.TempDirFactory;

/** A room for tests that write thousands of files: in memory where the system has such a folder, since syncs are free there. */
final class MemoryRoom implements TempDirFactory {

    @Override
    public Path createTempDirectory(AnnotatedElementContext element, ExtensionContext context) throws IOException {
        Path memory = Path.of("/dev/shm");
        return Files.isWritable(memory) ? Files.createTempDirectory(memory, "pack") : Files.createTempDirectory("pack");
    }
}
