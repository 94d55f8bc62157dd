package collarwright.job;

import java.lang.reflect.RecordComponent;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
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

    /** Letters that cannot be taken for a digit, for each other, or for the power of ten of a number. */
    private static final String LETTERS = "ABCDFGHJKLMNPRTUVWXY";

    private static final int LENGTH = 8;

    private Revisions() {}

    /**
     * Puts the revision into a job.
     *
     * @param job a job; the revision it has does not count
     * @return the same job with its revision
     */
    static Job stamped(Job job) {
        return new Job(
                job.title(),
                letters(canonical(job)),
                job.order(),
                job.dome(),
                job.size(),
                job.strut(),
                job.hub(),
                job.drilling(),
                job.limits(),
                job.shop());
    }

    private static String letters(String text) {
        BigInteger rest = new BigInteger(1, sha256(text));
        BigInteger base = BigInteger.valueOf(LETTERS.length());
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            BigInteger[] parts = rest.divideAndRemainder(base);
            letters.append(LETTERS.charAt(parts[1].intValue()));
            rest = parts[0];
        }
        return letters.toString();
    }

    private static byte[] sha256(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /**
     * Writes a value so that two values have the same text exactly if they are equal. It walks the records, so that a
     * value added to one of them later can never be forgotten here.
     *
     * @param value a record, list, set, optional, text, number, enum or yes and no
     * @return its text
     */
    static String canonical(Object value) {
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
        if (value instanceof Number || value instanceof Boolean) {
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
            if (!name.equals("source") && !name.equals("revision")) {
                text.append(name).append('=').append(canonical(read(whole, component))).append(';');
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
