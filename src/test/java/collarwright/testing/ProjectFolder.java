package collarwright.testing;

import java.nio.file.Path;

/** Where the clone is, whatever folder the tests were started from. */
public final class ProjectFolder {
    private ProjectFolder() {}

    /** The top folder of the clone. */
    public static Path top() {
        return Path.of(System.getProperty("project.basedir", System.getProperty("user.dir")))
                .toAbsolutePath();
    }

    /** The folder that the build writes to. */
    public static Path target() {
        String told = System.getProperty("project.build.directory");
        return told == null ? top().resolve("target") : Path.of(told).toAbsolutePath();
    }

    /** One of the scripts that stand between a test and an outside program. */
    public static Path checkerScript(String name) {
        return top().resolve(".ci").resolve("checkers").resolve(name);
    }
}
