package collarwright.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Says which programs from outside a test calls. Where one is absent the test is skipped and listed at the end of the
 * run; with {@code -Dcheckers=required} it fails instead.
 */
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(CheckerCondition.class)
public @interface NeedsChecker {
    /** The programs. */
    Checker[] value();
}
