package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.frame.FrameCsv;
import collarwright.frame.FrameDxf;
import collarwright.frame.FrameGlb;
import collarwright.frame.FrameModel;
import collarwright.frame.FrameNet;
import collarwright.frame.FrameObj;
import collarwright.frame.FrameOptions;
import collarwright.frame.FrameReader;
import collarwright.frame.FrameReading;
import collarwright.frame.FrameStl;
import collarwright.geometry.Vec3;
import collarwright.job.Job;
import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.testing.Checker;
import collarwright.testing.DomeJobs;
import collarwright.testing.EzdxfStrict;
import collarwright.testing.NeedsChecker;
import collarwright.testing.NodeScript;
import collarwright.testing.Seeds;
import collarwright.units.LengthUnit;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The model out of a pack, read back by our own readers and by general ones. */
class ModelFilesTest {

    private static final FrameOptions MILLIMETRES = new FrameOptions(Optional.of(LengthUnit.MM), 1e-3, false);
    private static final FrameOptions AS_SAID = new FrameOptions(Optional.empty(), 1e-3, false);

    private static List<ModelFiles> models() throws IOException {
        List<ModelFiles> models = new ArrayList<>();
        for (Job job : DomeJobs.all()) {
            Plan plan = Planner.plan(job, List.of());
            models.add(new ModelFiles(plan));
        }
        return models;
    }

    private static FrameNet read(String name, byte[] bytes, FrameOptions options) {
        FrameReading reading = FrameReader.read(name, bytes, options);
        return reading.frame().orElseThrow(() -> new AssertionError(reading.findings()));
    }

    @Test
    void objAndCsv_ofEveryDome_areReadBackExactly() throws IOException {
        for (ModelFiles model : models()) {
            FrameNet net = model.net();
            assertThat(read("a.obj", FrameObj.write(net), MILLIMETRES)).isEqualTo(net);
            assertThat(read("a.csv", FrameCsv.write(net, model.ids()), AS_SAID)).isEqualTo(net);
        }
    }

    // Far and near, large and small: every bit of every coordinate has to come back.
    @Test
    void objAndCsv_drawnNets_areReadBackExactly() {
        Seeds.each(100, draw -> {
            int nodes = draw.whole(3, 30);
            double size = StrictMath.pow(10, draw.between(1, 6));
            double[] coordinates = new double[3 * nodes];
            int[] members = new int[2 * (nodes - 1)];
            for (int node = 0; node < nodes; node++) {
                // On a rising spiral no two members meet.
                coordinates[3 * node] = size * StrictMath.cos(node) * (1 + draw.between(0, 0.1));
                coordinates[3 * node + 1] = size * StrictMath.sin(node) * (1 + draw.between(0, 0.1));
                coordinates[3 * node + 2] = size * node * draw.between(0.9, 1);
            }
            for (int m = 0; m + 1 < nodes; m++) {
                members[2 * m] = m;
                members[2 * m + 1] = m + 1;
            }
            FrameNet net = new FrameNet(coordinates, members);
            List<String> ids = IntStream.range(0, nodes).mapToObj(i -> "K" + i).toList();
            assertThat(read("a.obj", FrameObj.write(net), MILLIMETRES)).isEqualTo(net);
            assertThat(read("a.csv", FrameCsv.write(net, ids), AS_SAID)).isEqualTo(net);
        });
    }

    // Python's ezdxf reads it strictly, and finds as many lines as there are struts, on a layer for each type.
    @Test
    @NeedsChecker(Checker.EZDXF)
    void dxf_readStrictly_isCleanAndHasEveryStrut(@TempDir Path folder) throws IOException {
        for (ModelFiles model : models()) {
            Path file = folder.resolve("frame.dxf");
            Files.write(file, FrameDxf.write(model.model()));
            EzdxfStrict.Reading drawing = EzdxfStrict.read(file);
            assertThat(drawing.faults()).isEmpty();
            List<FrameModel.Rod> rods = model.model().rods();
            assertThat(drawing.entities()).hasSameSizeAs(rods);
            for (int i = 0; i < rods.size(); i++) {
                EzdxfStrict.Entity line = drawing.entities().get(i);
                assertThat(line.type()).isEqualTo("LINE");
                assertThat(line.layer()).isEqualTo(rods.get(i).type());
                assertThat(line.points().get(0).x())
                        .isCloseTo(rods.get(i).from().x(), within(1e-9));
                assertThat(line.points().get(1).y()).isCloseTo(rods.get(i).to().y(), within(1e-9));
            }
        }
    }

    // A prism of n sides on a circle of radius r has an end of n/2 · r² · sin(2π/n) (plane geometry, textbook).
    private static double volume(FrameModel model, boolean rods, boolean collars) {
        double volume = 0;
        for (FrameModel.Rod rod : rods ? model.rods() : List.<FrameModel.Rod>of()) {
            double r = rod.diameter() / 2;
            volume += 6
                    * r
                    * r
                    * StrictMath.sin(StrictMath.PI / 6)
                    * rod.to().minus(rod.from()).norm();
        }
        for (FrameModel.Collar c : collars ? model.collars() : List.<FrameModel.Collar>of()) {
            double square = c.outerRadius() * c.outerRadius() - c.innerRadius() * c.innerRadius();
            volume += 12 * square * StrictMath.sin(StrictMath.PI / 12) * c.width();
        }
        return volume;
    }

    private static JsonNode loaded(Path folder, String name, byte[] bytes) throws IOException {
        Path file = folder.resolve(name);
        Files.write(file, bytes);
        return NodeScript.run("frame-load.mjs", List.of(file.toString()));
    }

    // three.js' OBJLoader, STLLoader and GLTFLoader, in 32-bit floats.
    @Test
    @NeedsChecker(Checker.THREE_JS)
    void models_inThreeJs_haveTheirPiecesAndVolumes(@TempDir Path folder) throws IOException {
        ModelFiles files = models().get(0);
        FrameModel model = files.model();
        JsonNode lines = loaded(folder, "frame.obj", FrameObj.write(files.net()));
        assertThat(lines.at("/0/pieces").asInt()).isEqualTo(files.net().memberCount());
        int rodTriangles = 48 * model.rods().size();
        int collarTriangles = 192 * model.collars().size();
        JsonNode stl = loaded(folder, "solid.stl", FrameStl.write(model));
        assertThat(stl.at("/0/pieces").asInt()).isEqualTo(rodTriangles + collarTriangles);
        assertThat(stl.at("/0/volume").asDouble() / volume(model, true, true)).isCloseTo(1, within(1e-4));
        JsonNode glb = loaded(folder, "solid.glb", FrameGlb.write(model));
        assertThat(glb.at("/0/pieces").asInt()).isEqualTo(rodTriangles);
        assertThat(glb.at("/1/pieces").asInt()).isEqualTo(collarTriangles);
        assertThat(1e9 * glb.at("/0/volume").asDouble() / volume(model, true, false))
                .isCloseTo(1, within(1e-4));
        assertThat(1e9 * glb.at("/1/volume").asDouble() / volume(model, false, true))
                .isCloseTo(1, within(1e-4));
        // +y up: the highest point of the dome is the highest y there, and metres are a thousandth.
        double top = stl.at("/0/max/2").asDouble();
        assertThat(StrictMath.max(
                        glb.at("/0/max/1").asDouble(), glb.at("/1/max/1").asDouble()))
                .isCloseTo(top / 1000, within(1e-5));
    }

    // Closed: every edge of a solid is walked once each way (topology, textbook). Corners are equal to the bit.
    @Test
    void stl_everySolid_isClosed() throws IOException {
        for (ModelFiles files : models()) {
            byte[] bytes = FrameStl.write(files.model());
            ByteBuffer in = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
            Map<String, Integer> walked = new HashMap<>();
            for (int t = 0; t < in.getInt(80); t++) {
                String[] corner = new String[3];
                for (int i = 0; i < 3; i++) {
                    int at = 84 + 50 * t + 12 + 12 * i;
                    corner[i] = in.getFloat(at) + " " + in.getFloat(at + 4) + " " + in.getFloat(at + 8);
                }
                for (int i = 0; i < 3; i++) {
                    walked.merge(corner[i] + ">" + corner[(i + 1) % 3], 1, Integer::sum);
                }
            }
            walked.forEach((edge, times) -> {
                String[] ends = edge.split(">", -1);
                assertThat(times).as(edge).isEqualTo(1);
                assertThat(walked).containsKey(ends[1] + ">" + ends[0]);
            });
        }
    }

    // A rod stands off its node by the setback, and a collar inward of its node on the hub's axis.
    @Test
    void solids_stand_whereThePlanPutsThem() throws IOException {
        for (ModelFiles files : models()) {
            FrameNet net = files.net();
            for (FrameModel.Collar collar : files.model().collars()) {
                double nearest = IntStream.range(0, net.nodeCount())
                        .mapToDouble(node -> {
                            Vec3 off = collar.centre().minus(net.node(node));
                            return off.cross(collar.axis()).norm() < 1e-6 ? off.norm() : Double.POSITIVE_INFINITY;
                        })
                        .min()
                        .orElseThrow();
                assertThat(nearest).isLessThan(collar.outerRadius());
            }
        }
    }
}
