package collarwright.job;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The profiles that come with the program. A jar cannot list a folder, so {@code index.txt} lists them. */
public final class BundledProfiles implements ProfileSource {

    private static final String FOLDER = "/profiles/";

    /** The profiles on the class path. */
    public BundledProfiles() {}

    @Override
    public List<String> names() throws IOException {
        return new String(read("index.txt"), StandardCharsets.UTF_8)
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
    }

    @Override
    public byte[] read(String name) throws IOException {
        try (InputStream in = BundledProfiles.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new FileNotFoundException("the program has no " + place(name));
            }
            return in.readAllBytes();
        }
    }

    @Override
    public String place(String name) {
        return name.isEmpty() ? "the program's profiles" : "(program)/profiles/" + name;
    }
}
