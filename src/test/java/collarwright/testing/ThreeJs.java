package collarwright.testing;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Geodesic spheres (class I, vertices on the unit sphere) as three.js builds them, in 32-bit floats; and convex hulls. */
public final class ThreeJs {
    /** How far two chord factors may lie apart and still count as one: some ten steps of a 32-bit float. */
    private static final double SAME = 2e-6;

    private ThreeJs() {}

    /** The solid that is divided. */
    public enum Solid {
        /** Twenty faces. */
        ICO,
        /** Eight faces. */
        OCTA,
        /** Four faces. */
        TETRA
    }

    /**
     * A corner on the unit sphere.
     *
     * @param x right
     * @param y three.js' up
     * @param z toward the viewer
     */
    public record Point(double x, double y, double z) {}

    /**
     * An edge.
     *
     * @param from index of the one corner
     * @param to index of the other, greater than from
     */
    public record Edge(int from, int to) {}

    /**
     * Edges of one length.
     *
     * @param factor mean length over the sphere's radius, good to about 1e-6
     * @param count how many edges
     */
    public record Factor(double factor, int count) {}

    /**
     * A whole sphere.
     *
     * @param points corners, each once
     * @param edges each once
     * @param faceCount number of triangles
     */
    public record Sphere(List<Point> points, List<Edge> edges, int faceCount) {
        /** Copies the lists. */
        public Sphere {
            points = List.copyOf(points);
            edges = List.copyOf(edges);
        }

        /** The length of an edge. */
        public double length(Edge edge) {
            Point a = points.get(edge.from());
            Point b = points.get(edge.to());
            return Math.sqrt(square(a.x() - b.x()) + square(a.y() - b.y()) + square(a.z() - b.z()));
        }

        private static double square(double value) {
            return value * value;
        }

        /** The different lengths, shortest first. */
        public List<Factor> factors() {
            List<Double> lengths =
                    new ArrayList<>(edges.stream().map(this::length).toList());
            Collections.sort(lengths);
            List<Factor> factors = new ArrayList<>();
            int first = 0;
            for (int i = 1; i <= lengths.size(); i++) {
                if (i == lengths.size() || lengths.get(i) - lengths.get(i - 1) > SAME) {
                    List<Double> equal = lengths.subList(first, i);
                    double mean = equal.stream()
                            .mapToDouble(Double::doubleValue)
                            .average()
                            .orElseThrow();
                    factors.add(new Factor(mean, equal.size()));
                    first = i;
                }
            }
            return factors;
        }
    }

    /** The edges of the convex hull of some points; points in one plane are joined by chance. */
    public static List<Edge> hull(List<Point> points) {
        String told = points.stream()
                .map(p -> "[" + p.x() + "," + p.y() + "," + p.z() + "]")
                .collect(Collectors.joining(",", "[", "]"));
        try {
            Path file = Files.createTempFile("points", ".json");
            try {
                Files.writeString(file, told);
                return edges(NodeScript.run("convex-hull.mjs", List.of(file.toString())));
            } finally {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Edge> edges(JsonNode told) {
        return Json.nodes(told.get("edges")).stream()
                .map(e -> new Edge(e.get(0).asInt(), e.get(1).asInt()))
                .toList();
    }

    /** Builds a sphere. */
    public static Sphere sphere(Solid solid, int frequency) {
        JsonNode told =
                NodeScript.run("geodesic-sphere.mjs", List.of(solid.name().toLowerCase(Locale.ROOT), frequency + ""));
        return new Sphere(
                Json.nodes(told.get("points")).stream()
                        .map(p -> new Point(
                                p.get(0).asDouble(),
                                p.get(1).asDouble(),
                                p.get(2).asDouble()))
                        .toList(),
                edges(told),
                told.get("faces").size());
    }
}
