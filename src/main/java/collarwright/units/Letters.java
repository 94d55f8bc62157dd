package collarwright.units;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** Short names made of letters that stand for a longer text, so that two texts can be told apart on paper. */
public final class Letters {

    /** Letters that are not mistaken for digits, and no E, so that a name never looks like a number. */
    private static final String ALPHABET = "ABCDFGHJKLMNPRTUVWXY";

    private static final int LENGTH = 8;

    private Letters() {}

    /**
     * Names a text by 8 letters of its SHA-256.
     *
     * @param text any text
     * @return 8 letters of A–Z without E, I, O, Q, S and Z; equal texts have equal names
     */
    public static String of(String text) {
        byte[] digest = digest(text);
        StringBuilder name = new StringBuilder(LENGTH);
        for (int i = 0; i < LENGTH; i++) {
            int pair = ((digest[2 * i] & 0xff) << 8) | (digest[2 * i + 1] & 0xff);
            name.append(ALPHABET.charAt(pair % ALPHABET.length()));
        }
        return name.toString();
    }

    private static byte[] digest(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
