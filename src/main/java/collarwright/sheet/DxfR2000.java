package collarwright.sheet;

import collarwright.drawing.Box;
import collarwright.drawing.Sheet;
import java.util.List;

/**
 * What a release 2000 drawing holds besides its lines: classes, tables, blocks and objects, each thing with its handle
 * and its owner.
 *
 * <p>Source: Autodesk, DXF Reference for AutoCAD 2000, chapters on the TABLES, BLOCKS and OBJECTS sections. That readers
 * want all of it was tried, not specified.
 */
final class DxfR2000 {
    static final int MODEL_SPACE = 0x1F;
    /** First handle that is free for lines. */
    static final int FIRST_FREE = 0x100;

    private static final int VPORT_TABLE = 0x8;
    private static final int LTYPE_TABLE = 0x5;
    private static final int LAYER_TABLE = 0x2;
    private static final int STYLE_TABLE = 0x3;
    private static final int VIEW_TABLE = 0x6;
    private static final int UCS_TABLE = 0x7;
    private static final int APPID_TABLE = 0x9;
    private static final int DIMSTYLE_TABLE = 0xA;
    private static final int BLOCK_RECORD_TABLE = 0x1;
    private static final int PAPER_SPACE = 0x1B;
    private static final int LAYER_ZERO = 0x10;
    private static final int FIRST_LAYER = 0x40;
    private static final int TEXT_STYLE = 0x11;
    private static final int ROOT = 0xC;
    private static final int GROUPS = 0xD;
    private static final int LAYOUTS = 0x1A;
    private static final int PLOT_STYLES = 0xE;
    private static final int NORMAL_PLOT_STYLE = 0xF;
    private static final int MODEL_LAYOUT = 0x22;
    private static final int PAPER_LAYOUT = 0x1E;
    private static final int NOTHING = 0;

    private final DxfTags tags;
    private final Box extents;
    private final List<LayerMap.Style> styles;

    DxfR2000(DxfTags tags, Sheet sheet, LayerMap map) {
        this.tags = tags;
        this.extents = map.extents(sheet);
        this.styles =
                map.layers(sheet).stream().map(layer -> map.of(layer.role())).toList();
    }

    void classes() {
        tags.start("CLASSES").end();
    }

    void tables() {
        tags.start("TABLES");
        viewports();
        table("LTYPE", LTYPE_TABLE, 3);
        lineType(0x14, "ByBlock", "");
        lineType(0x15, "ByLayer", "");
        lineType(0x16, "Continuous", "Solid line");
        tags.text(0, "ENDTAB");
        layers();
        textStyles();
        table("VIEW", VIEW_TABLE, 0);
        tags.text(0, "ENDTAB");
        table("UCS", UCS_TABLE, 0);
        tags.text(0, "ENDTAB");
        table("APPID", APPID_TABLE, 1);
        record("APPID", 0x12, APPID_TABLE, "AcDbRegAppTableRecord");
        tags.text(2, "ACAD").whole(70, 0).text(0, "ENDTAB");
        dimensionStyles();
        table("BLOCK_RECORD", BLOCK_RECORD_TABLE, 2);
        blockRecord(MODEL_SPACE, "*Model_Space", MODEL_LAYOUT);
        blockRecord(PAPER_SPACE, "*Paper_Space", PAPER_LAYOUT);
        tags.text(0, "ENDTAB").end();
    }

    private void table(String name, int handle, int count) {
        tags.text(0, "TABLE").text(2, name).handle(5, handle).handle(330, NOTHING);
        tags.text(100, "AcDbSymbolTable").whole(70, count);
    }

    private void record(String name, int handle, int owner, String marker) {
        tags.text(0, name).handle(5, handle).handle(330, owner);
        tags.text(100, "AcDbSymbolTableRecord").text(100, marker);
    }

    private void viewports() {
        table("VPORT", VPORT_TABLE, 1);
        record("VPORT", 0x30, VPORT_TABLE, "AcDbViewportTableRecord");
        double height = StrictMath.max(extents.height(), extents.width() / 1.5) * 1.1;
        tags.text(2, "*Active").whole(70, 0).flat(10, 0, 0).flat(11, 1, 1);
        tags.flat(12, (extents.left() + extents.right()) / 2, (extents.bottom() + extents.top()) / 2);
        tags.flat(13, 0, 0).flat(14, 10, 10).flat(15, 10, 10);
        tags.number(16, 0).number(26, 0).number(36, 1).point(17, 0, 0);
        tags.number(40, height).number(41, 1.5).number(42, 50).number(43, 0).number(44, 0);
        tags.number(50, 0)
                .number(51, 0)
                .whole(71, 0)
                .whole(72, 100)
                .whole(73, 1)
                .whole(74, 3);
        tags.whole(75, 0).whole(76, 0).whole(77, 0).whole(78, 0).whole(281, 0).whole(65, 1);
        tags.point(110, 0, 0).number(111, 1).number(121, 0).number(131, 0);
        tags.number(112, 0).number(122, 1).number(132, 0).whole(79, 0).number(146, 0);
        tags.text(0, "ENDTAB");
    }

    private void lineType(int handle, String name, String description) {
        record("LTYPE", handle, LTYPE_TABLE, "AcDbLinetypeTableRecord");
        tags.text(2, name)
                .whole(70, 0)
                .text(3, description)
                .whole(72, 65)
                .whole(73, 0)
                .number(40, 0);
    }

    private void layers() {
        table("LAYER", LAYER_TABLE, styles.size() + 1);
        layer(LAYER_ZERO, "0", 7);
        int handle = FIRST_LAYER;
        for (LayerMap.Style style : styles) {
            layer(handle, style.layer(), style.colour());
            handle++;
        }
        tags.text(0, "ENDTAB");
    }

    private void layer(int handle, String name, int colour) {
        record("LAYER", handle, LAYER_TABLE, "AcDbLayerTableRecord");
        tags.text(2, name).whole(70, 0).whole(62, colour).text(6, "Continuous");
        tags.whole(370, -3).handle(390, NORMAL_PLOT_STYLE);
    }

    private void textStyles() {
        table("STYLE", STYLE_TABLE, 1);
        record("STYLE", TEXT_STYLE, STYLE_TABLE, "AcDbTextStyleTableRecord");
        tags.text(2, "Standard")
                .whole(70, 0)
                .number(40, 0)
                .number(41, 1)
                .number(50, 0)
                .whole(71, 0);
        tags.number(42, 2.5).text(3, "txt").text(4, "").text(0, "ENDTAB");
    }

    private void dimensionStyles() {
        table("DIMSTYLE", DIMSTYLE_TABLE, 1);
        tags.text(100, "AcDbDimStyleTable");
        tags.text(0, "DIMSTYLE").handle(105, 0x27).handle(330, DIMSTYLE_TABLE);
        tags.text(100, "AcDbSymbolTableRecord").text(100, "AcDbDimStyleTableRecord");
        tags.text(2, "Standard").whole(70, 0).handle(340, TEXT_STYLE).text(0, "ENDTAB");
    }

    private void blockRecord(int handle, String name, int layout) {
        record("BLOCK_RECORD", handle, BLOCK_RECORD_TABLE, "AcDbBlockTableRecord");
        tags.text(2, name).handle(340, layout);
    }

    void blocks() {
        tags.start("BLOCKS");
        block(0x20, 0x21, MODEL_SPACE, "*Model_Space", false);
        block(0x1C, 0x1D, PAPER_SPACE, "*Paper_Space", true);
        tags.end();
    }

    private void block(int begin, int end, int owner, String name, boolean paper) {
        space(tags.text(0, "BLOCK").handle(5, begin).handle(330, owner), paper);
        tags.text(100, "AcDbBlockBegin").text(2, name).whole(70, 0).point(10, 0, 0);
        tags.text(3, name).text(1, "");
        space(tags.text(0, "ENDBLK").handle(5, end).handle(330, owner), paper);
        tags.text(100, "AcDbBlockEnd");
    }

    private static void space(DxfTags tags, boolean paper) {
        tags.text(100, "AcDbEntity");
        if (paper) {
            tags.whole(67, 1);
        }
        tags.text(8, "0");
    }

    void objects() {
        tags.start("OBJECTS");
        dictionary(ROOT, NOTHING);
        entry("ACAD_GROUP", GROUPS);
        entry("ACAD_LAYOUT", LAYOUTS);
        entry("ACAD_PLOTSTYLENAME", PLOT_STYLES);
        dictionary(GROUPS, ROOT);
        dictionary(LAYOUTS, ROOT);
        entry("Layout1", PAPER_LAYOUT);
        entry("Model", MODEL_LAYOUT);
        tags.text(0, "ACDBDICTIONARYWDFLT").handle(5, PLOT_STYLES).handle(330, ROOT);
        tags.text(100, "AcDbDictionary").whole(281, 1);
        entry("Normal", NORMAL_PLOT_STYLE);
        tags.text(100, "AcDbDictionaryWithDefault").handle(340, NORMAL_PLOT_STYLE);
        tags.text(0, "ACDBPLACEHOLDER").handle(5, NORMAL_PLOT_STYLE).handle(330, PLOT_STYLES);
        layout(MODEL_LAYOUT, "Model", 0, MODEL_SPACE);
        layout(PAPER_LAYOUT, "Layout1", 1, PAPER_SPACE);
        tags.end();
    }

    private void dictionary(int handle, int owner) {
        tags.text(0, "DICTIONARY").handle(5, handle).handle(330, owner);
        tags.text(100, "AcDbDictionary").whole(281, 1);
    }

    private void entry(String name, int handle) {
        tags.text(3, name).handle(350, handle);
    }

    private void layout(int handle, String name, int order, int record) {
        tags.text(0, "LAYOUT").handle(5, handle).handle(330, LAYOUTS);
        tags.text(100, "AcDbPlotSettings").text(1, "").text(2, "").text(4, "").text(6, "");
        tags.number(40, 0)
                .number(41, 0)
                .number(42, 0)
                .number(43, 0)
                .number(44, 0)
                .number(45, 0);
        tags.number(46, 0)
                .number(47, 0)
                .number(48, 0)
                .number(49, 0)
                .number(140, 0)
                .number(141, 0);
        // 1 mm on paper is 1 unit of the drawing; a model layout also carries 1024, "model type".
        tags.number(142, 1)
                .number(143, 1)
                .whole(70, order == 0 ? 1712 : 688)
                .whole(72, 1)
                .whole(73, 0)
                .whole(74, 5);
        tags.text(7, "").whole(75, 16).number(147, 1).number(148, 0).number(149, 0);
        tags.text(100, "AcDbLayout").text(1, name).whole(70, 1).whole(71, order);
        tags.flat(10, 0, 0).flat(11, extents.right(), extents.top()).point(12, 0, 0);
        tags.point(14, extents.left(), extents.bottom()).point(15, extents.right(), extents.top());
        tags.number(146, 0).point(13, 0, 0);
        tags.number(16, 1)
                .number(26, 0)
                .number(36, 0)
                .number(17, 0)
                .number(27, 1)
                .number(37, 0);
        tags.whole(76, 0).handle(330, record);
    }
}
