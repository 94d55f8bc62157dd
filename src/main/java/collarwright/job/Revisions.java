package collarwright.job;

import collarwright.frame.FrameNet;
import collarwright.machining.CuttingData;
import collarwright.strut.EndWork;
import collarwright.tooling.Boring;
import collarwright.tooling.CutterKind;
import collarwright.units.Letters;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Gives a job its revision: 8 letters of the SHA-256 of everything that was resolved. Comments, the order of keys, the unit
 * a length was written in, paths and the program's version do not count, nor does the wording of a source; a value of a
 * profile does.
 */
final class Revisions {

    /** Choices that came later; a job that does not make them keeps the revision it had before they were there. */
    private static final Set<Object> USUAL = Set.of(
            SheetSettings.USUAL,
            SiteSettings.USUAL,
            ShopTimes.USUAL,
            ShopTimes.Hands.USUAL,
            Shop.Batch.USUAL,
            CuttingSettings.USUAL,
            PriceList.NONE);

    private static final Set<String> LATER = Set.of(
            "mostCutters",
            "bins",
            "flip",
            "across",
            "bed",
            "strutBed",
            "strip",
            "boring",
            "teeth",
            "boredWith",
            "tube",
            "keepsPlugs",
            "csv",
            "plates",
            "longestFree",
            "layers",
            "insideTemplates",
            "nest",
            "endWork");

    /** What only words on paper say. */
    private static final Set<String> SILENT = Set.of("source", "revision", "growth");

    /** What such a choice is while nobody makes it. */
    private static final Set<Object> UNSAID =
            Set.of(Optional.empty(), false, 1, Boring.NONE, CsvForm.USUAL, EndWork.NONE);

    private Revisions() {}

    /**
     * Puts the revision into a job.
     *
     * @param job a job; the revision it has does not count
     * @return the same job with its revision
     */
    static Job stamped(Job job) {
        boolean mills = !job.drilling().boring().endMills().isEmpty();
        return job.revised(Letters.of(canonical(mills ? job : drilled(job))));
    }

    /** The job without cutting data of end mills, where it has none: such jobs keep the revision they had. */
    private static Job drilled(Job job) {
        Shop shop = job.shop();
        return job.with(new Shop(
                shop.machine(),
                shop.programUnits(),
                drilled(shop.cutting()),
                shop.batch(),
                shop.times(),
                shop.strutBed().map(b -> new Shop.StrutBed(b.machine(), drilled(b.cutting()))),
                shop.strip()));
    }

    private static CuttingData drilled(CuttingData data) {
        List<CuttingData.Row> rows = data.rows().stream()
                .filter(r -> r.kind() != CutterKind.END_MILL)
                .toList();
        return new CuttingData(data.material(), data.title(), rows, data.caution());
    }

    /**
     * Writes a value so that two values have the same text exactly if they are equal. It walks the records, so that a
     * value added to one of them later can never be forgotten here.
     *
     * @param value a record, list, set, optional, text, number, enum or yes and no
     * @return its text
     */
    static String canonical(Object value) {
        if (value instanceof FrameNet net) {
            return net.digest();
        }
        if (value instanceof Record whole) {
            return components(whole);
        }
        if (value instanceof List<?> list) {
            return list.stream().map(Revisions::canonical).collect(Collectors.joining(",", "[", "]"));
        }
        if (value instanceof Set<?> set) {
            return set.stream().map(Revisions::canonical).sorted().collect(Collectors.joining(",", "{", "}"));
        }
        if (value instanceof Optional<?> optional) {
            return optional.map(Revisions::canonical).orElse("none");
        }
        if (value instanceof String text) {
            return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
        }
        if (value instanceof Double number) {
            // Digits of a double differ between Java versions now and then; its bits never do.
            return Double.toHexString(number);
        }
        if (value instanceof Number || value instanceof Boolean || value instanceof Character) {
            return value.toString();
        }
        if (value instanceof Enum<?> word) {
            return word.name();
        }
        throw new IllegalArgumentException("no canonical text for " + value.getClass());
    }

    private static String components(Record whole) {
        StringBuilder text = new StringBuilder(whole.getClass().getSimpleName()).append('(');
        for (RecordComponent component : whole.getClass().getRecordComponents()) {
            String name = component.getName();
            // Printed, run or timed as usual, or no trial piece, is as good as nothing said: such jobs keep the
            // revision they
            // had before there was a choice.
            Object value = read(whole, component);
            boolean unsaid = USUAL.contains(value) || (LATER.contains(name) && UNSAID.contains(value));
            if (!SILENT.contains(name) && !unsaid) {
                text.append(name).append('=').append(canonical(value)).append(';');
            }
        }
        return text.append(')').toString();
    }

    private static Object read(Record whole, RecordComponent component) {
        try {
            return component.getAccessor().invoke(whole);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the value types are public records", e);
        }
    }
}
