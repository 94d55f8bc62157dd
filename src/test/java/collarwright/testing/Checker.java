package collarwright.testing;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** The programs from outside that tests call, and where each is looked for. {@code .ci/install-checkers} installs all. */
public enum Checker {
    /** The RS274/NGC interpreter, by {@link Rs274}. */
    RS274("rs274") {
        @Override
        Optional<String> look() {
            return rs274().isPresent() ? Optional.empty() : Optional.of("program rs274 not found");
        }
    },
    /** The strict DXF reader, by {@link EzdxfStrict}. */
    EZDXF("ezdxf") {
        @Override
        Optional<String> look() {
            return pythonModule("ezdxf");
        }
    },
    /** The reader of workbooks, by {@link TableReader}. */
    OPENPYXL("openpyxl") {
        @Override
        Optional<String> look() {
            return pythonModule("openpyxl");
        }
    },
    /** The SVG reader for physical sizes, by {@link SvgElements}. */
    SVGELEMENTS("svgelements") {
        @Override
        Optional<String> look() {
            return pythonModule("svgelements");
        }
    },
    /** The XML parser, by {@link Xmllint}. */
    XMLLINT("xmllint") {
        @Override
        Optional<String> look() {
            return programs("xmllint");
        }
    },
    /** The browser, by {@link Chromium}. */
    CHROMIUM("chromium") {
        @Override
        Optional<String> look() {
            return programs("chromium").or(() -> nodePackage("playwright-core"));
        }
    },
    /** The PDF drawing commands, by {@link Mutool}. */
    MUTOOL("mutool") {
        @Override
        Optional<String> look() {
            return programs("mutool");
        }
    },
    /** The PDF structure, by {@link Qpdf}. */
    QPDF("qpdf") {
        @Override
        Optional<String> look() {
            return programs("qpdf");
        }
    },
    /** PDF page sizes, fonts and text, by {@link Poppler}. */
    POPPLER("poppler") {
        @Override
        Optional<String> look() {
            return programs("pdfinfo", "pdftotext", "pdffonts");
        }
    },
    /** The integer solver, by {@link Glpsol}. */
    GLPSOL("glpsol") {
        @Override
        Optional<String> look() {
            return programs("glpsol");
        }
    },
    /** Geodesic spheres, by {@link ThreeJs}. */
    THREE_JS("three.js") {
        @Override
        Optional<String> look() {
            return nodePackage("three");
        }
    },
    /** The rules of accessibility, by {@link Axe}. */
    AXE("axe-core (npm)") {
        @Override
        Optional<String> look() {
            return programs("chromium").or(() -> nodePackage("playwright-core")).or(() -> nodePackage("axe-core"));
        }
    },
    /** The second DXF geometry, by {@link DxfJs}. */
    DXF_JS("dxf (npm)") {
        @Override
        Optional<String> look() {
            return nodePackage("dxf");
        }
    },
    /** The third reader of DXF, by {@link LibreCad}. */
    LIBRECAD("librecad") {
        @Override
        Optional<String> look() {
            return programs("librecad");
        }
    },
    /** The second reader of plain programs, by {@link GcodeEnds}. */
    GCODE_JS("gcode-toolpath (npm)") {
        @Override
        Optional<String> look() {
            return nodePackage("gcode-toolpath").or(() -> nodePackage("gcode-parser"));
        }
    };

    private static final Map<Checker, Optional<String>> FOUND = new ConcurrentHashMap<>();

    private final String shownName;

    Checker(String shownName) {
        this.shownName = shownName;
    }

    /** The name for people. */
    public String shownName() {
        return shownName;
    }

    /** Why this checker can't be used here, or nothing if it can. */
    public Optional<String> absence() {
        return FOUND.computeIfAbsent(this, Checker::look);
    }

    abstract Optional<String> look();

    /** The Python that Debian's packages belong to; another one may come first on the path. */
    static String python() {
        return Files.isExecutable(Path.of("/usr/bin/python3")) ? "/usr/bin/python3" : "python3";
    }

    /** The interpreter: in the folder that .ci/install-checkers fills, or on the path. */
    static Optional<Path> rs274() {
        Path unpacked = cache().resolve("rs274").resolve("rs274");
        return Files.isExecutable(unpacked) ? Optional.of(unpacked) : onPath("rs274");
    }

    private static Path cache() {
        Map<String, String> environment = System.getenv();
        if (environment.containsKey("COLLARWRIGHT_CACHE")) {
            return Path.of(environment.get("COLLARWRIGHT_CACHE"));
        }
        String told = environment.getOrDefault("XDG_CACHE_HOME", "");
        Path caches = told.isEmpty() ? Path.of(System.getProperty("user.home"), ".cache") : Path.of(told);
        return caches.resolve("collarwright");
    }

    static Optional<Path> onPath(String program) {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .filter(folder -> !folder.isEmpty())
                .map(folder -> Path.of(folder, program))
                .filter(Files::isExecutable)
                .findFirst();
    }

    private static Optional<String> programs(String... names) {
        return Stream.of(names)
                .filter(name -> onPath(name).isEmpty())
                .map(name -> "program " + name + " not found")
                .findFirst();
    }

    private static Optional<String> pythonModule(String name) {
        if (!Files.isExecutable(Path.of(python())) && onPath(python()).isEmpty()) {
            return Optional.of("program python3 not found");
        }
        return Run.of(List.of(python(), "-c", "import " + name)).exit() == 0
                ? Optional.empty()
                : Optional.of("Python module " + name + " not found");
    }

    private static Optional<String> nodePackage(String name) {
        Path there = ProjectFolder.top().resolve(".ci").resolve("node_modules").resolve(name);
        return programs("node")
                .or(() -> Files.isDirectory(there)
                        ? Optional.empty()
                        : Optional.of("Node package " + name + " not found: run npm ci in .ci"));
    }
}
