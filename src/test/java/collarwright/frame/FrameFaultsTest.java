package collarwright.frame;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Finding;
import collarwright.units.LengthUnit;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is said of a frame's file that is wrong, word for word. */
class FrameFaultsTest {

    private static final FrameOptions METRES = new FrameOptions(Optional.of(LengthUnit.M), 0.1, false);
    private static final String CORNERS = "v 0 0 0\nv 1 0 0\nv 0 1 0\nv 1 1 0\n";

    private static List<String> told(String name, byte[] bytes, FrameOptions options) {
        return FrameReader.read(name, bytes, options).findings().stream()
                .map(FrameFaultsTest::words)
                .toList();
    }

    private static List<String> obj(String text) {
        return told("a.obj", SampleFrames.bytes(text), METRES);
    }

    private static String words(Finding f) {
        return f.level() + " " + f.code() + " " + f.where().text() + ": " + f.expected() + " | " + f.found() + " | "
                + String.join("; ", f.hints());
    }

    @Test
    void format_unknown_isRefused() {
        assertThat(told("net.step", new byte[0], METRES))
                .containsExactly("STOP FRAME_FILE net.step: a file that ends in .obj, .stl, .ply, .off, .dxf or .csv |"
                        + " another ending | save the frame in one of these formats");
    }

    @Test
    void unit_missingOrAnother_isTold() {
        FrameOptions none = new FrameOptions(Optional.empty(), 0.1, false);
        assertThat(told("a.obj", SampleFrames.bytes(SampleFrames.OBJ), none))
                .containsExactly("STOP FRAME_UNIT a.obj: the unit of the file's numbers | the file does not say it |"
                        + " write frame-unit = \"mm\" (or cm, m, in, ft) in [dome]");
        assertThat(told(
                        "a.csv",
                        SampleFrames.bytes(SampleFrames.CSV),
                        new FrameOptions(Optional.of(LengthUnit.MM), 0, false)))
                .containsExactly("WARN FRAME_UNIT a.csv: m, as the file says | frame-unit = \"mm\" |"
                        + " the job's unit is taken; take frame-unit out to have the file's");
    }

    @Test
    void obj_wrongLines_areToldAllWithTheirPlaces() {
        assertThat(obj("v 0 0\nv 1 0 nan\nv 1,5 0 0\nf 1 2\nf 1 2 9\nl 1\nl 1 x\n"))
                .containsExactly(
                        "STOP FRAME_SYNTAX a.obj:1:1: v and three numbers | v 0 0 |"
                                + " write the point again; a decimal point, no comma",
                        "STOP FRAME_COORDINATE a.obj:2:1: three finite numbers | 1.0 0.0 NaN |"
                                + " mend the point in the program that wrote it",
                        "STOP FRAME_SYNTAX a.obj:3:1: v and three numbers | v 1,5 0 0 |"
                                + " write the point again; a decimal point, no comma",
                        "STOP FRAME_SYNTAX a.obj:4:1: f and three corners or more | f 1 2 |"
                                + " a face has three corners; write an edge as l",
                        "STOP FRAME_SYNTAX a.obj:5:1: the number of a point that stands above, 1 to 3 | 9 |"
                                + " points have to stand before the faces and lines that name them",
                        "STOP FRAME_SYNTAX a.obj:6:1: l and two points or more | l 1 | name both",
                        "STOP FRAME_SYNTAX a.obj:7:1: the number of a point that stands above, 1 to 3 | x |"
                                + " points have to stand before the faces and lines that name them");
    }

    @Test
    void members_withoutLengthTwiceAndCrossing_areTold() {
        assertThat(obj(CORNERS + "l 1 2\nl 2 1\nl 3 3\nl 1 3\n"))
                .containsExactly(
                        "STOP FRAME_MEMBER a.obj:6:1: each member once | a member that stands before, a.obj:5:1 |"
                                + " take one of the two out",
                        "STOP FRAME_MEMBER a.obj:7:1: a member between two nodes | both ends are one node, within 0.1"
                                + " mm | take it out, or make merge smaller",
                        "NOTE FRAME_MEMBER a.obj: points that some face or line uses | 1 point that none uses |"
                                + " left out");
        assertThat(obj(CORNERS + "l 1 4\nl 2 3\n"))
                .containsExactly("STOP FRAME_CROSSING a.obj / members N001/N004 and N002/N003: members that meet at"
                        + " their nodes only | they come within 0.000 mm of each other | put a node where they meet,"
                        + " or take one of them out");
    }

    // A node on another member's length, and two members on one line, meet as crossing ones do.
    @Test
    void members_endingOnOrLyingOnOthers_areTold() {
        assertThat(obj("v 0 0 0\nv 2 0 0\nv 1 0 0\nv 1 1 0\nl 1 2\nl 3 4\n"))
                .hasSize(1)
                .allMatch(w -> w.contains("FRAME_CROSSING a.obj / members N001/N002 and N003/N004"));
        assertThat(obj("v 0 0 0\nv 3 0 0\nv 1 0 0\nv 2 0 0\nl 1 2\nl 3 4\n"))
                .hasSize(1)
                .allMatch(w -> w.contains("FRAME_CROSSING"));
        assertThat(obj("v 0 0 0\nv 3 0 0\nv 1 0 1\nv 2 0 1\nl 1 2\nl 3 4\n")).isEmpty();
    }

    @Test
    void faces_threeAtAnEdge_areWarnedOf() {
        assertThat(obj(CORNERS + "v 0 0 1\nf 1 2 3\nf 2 1 4\nf 1 2 5\n"))
                .filteredOn(w -> w.startsWith("WARN"))
                .containsExactly("WARN FRAME_MEMBER a.obj:6:1: an edge of one face or two | 3 faces at one edge |"
                        + " the frame is no plain surface there; it is built all the same");
    }

    @Test
    void csv_wrongRows_areTold() {
        String text = """
                kind,id,x (mm),y,z
                node,a,0,0,0
                node,a,1,0,0
                node,b,1,0
                strut,a,b
                member,a,c
                node,d,5,5,5
                """;
        assertThat(told("a.csv", SampleFrames.bytes(text), METRES))
                .containsExactly(
                        "STOP FRAME_SYNTAX a.csv:3:1: a name that no other node has | a, which stands in line 2 too |"
                                + " give it another name",
                        "STOP FRAME_SYNTAX a.csv:4:1: node, a name and three numbers | node,b,1,0 |"
                                + " write the row again; a decimal point, no comma; columns of your own need a name in the"
                                + " head",
                        "STOP FRAME_SYNTAX a.csv:5:1: a row node,ID,x,y,z or member,ID,ID | strut,a,b |"
                                + " write node or member in its first column",
                        "STOP FRAME_SYNTAX a.csv:6:1: member and the names of two nodes that stand above | member,a,c |"
                                + " check the names; nodes have to stand before their members",
                        "WARN FRAME_UNIT a.csv: mm, as the file says | frame-unit = \"m\" |"
                                + " the job's unit is taken; take frame-unit out to have the file's");
        assertThat(told(
                        "a.csv",
                        SampleFrames.bytes(SampleFrames.CSV.replace("member;d;e", "") + "node;f;9;9;9\r\n"),
                        METRES))
                .containsExactly("STOP FRAME_MEMBER a.csv:15:1: a node with members | a node that no member joins |"
                        + " take it out, or add its members");
    }

    @Test
    void filesCutShort_areToldSo() {
        byte[] stl = Arrays.copyOf(SampleFrames.binaryStl("binary"), 200);
        assertThat(told("a.stl", stl, METRES))
                .containsExactly("STOP FRAME_SYNTAX a.stl / record 3: 4 triangles, as the file's head promises |"
                        + " 2 whole ones | the file is cut short or no STL: write it again");
        String text = SampleFrames.stl();
        assertThat(told("a.stl", SampleFrames.bytes(text.substring(0, text.indexOf("endsolid"))), METRES))
                .hasSize(1)
                .allMatch(w -> w.endsWith(": endsolid at the end | the end of the file | the file is cut short or no"
                        + " STL: write it again"));
        byte[] ply = SampleFrames.binaryPly(ByteOrder.LITTLE_ENDIAN);
        assertThat(told("a.ply", Arrays.copyOf(ply, ply.length - 10), METRES))
                .containsExactly("STOP FRAME_SYNTAX a.ply / record 9: 4 of element face, as the head promises |"
                        + " fewer, or a word that is no number | the file is cut short: write it again");
        assertThat(told("a.off", SampleFrames.bytes(SampleFrames.OFF.substring(0, 60)), METRES))
                .hasSize(1)
                .allMatch(w -> w.contains("as many points and faces as the file's counts promise"));
        assertThat(told("a.dxf", SampleFrames.bytes(SampleFrames.dxf().replace("0\nEOF\n", "")), METRES))
                .anyMatch(w -> w.contains("EOF at the end | the end of the file"));
        assertThat(told("a.ply", SampleFrames.bytes("plx\n"), METRES))
                .containsExactly("STOP FRAME_SYNTAX a.ply:1:1: ply in the first line | plx | mend the file's head");
        assertThat(told("a.obj", new byte[0], METRES))
                .containsExactly("STOP FRAME_MEMBER a.obj: members: faces or lines | none |"
                        + " write the faces or lines of the frame too");
    }

    @Test
    void faults_manyOfAKind_areCounted() {
        assertThat(obj("v 0\n".repeat(33)))
                .hasSize(21)
                .last()
                .isEqualTo("STOP FRAME_SYNTAX a.obj: none of this kind | 13 more |"
                        + " mend those that are shown and read the file again");
    }
}
