package collarwright.testing;

import java.util.Optional;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.platform.commons.support.AnnotationSupport;

/** Decides for {@link NeedsChecker}: run, skip and note it, or fail. */
final class CheckerCondition implements ExecutionCondition {
    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        Optional<NeedsChecker> needs = AnnotationSupport.findAnnotation(context.getElement(), NeedsChecker.class);
        boolean required = "required".equals(System.getProperty("checkers"));
        for (Checker checker : needs.map(NeedsChecker::value).orElse(new Checker[0])) {
            ConditionEvaluationResult decision = decide(checker, checker.absence(), required);
            if (decision.isDisabled()) {
                AbsentCheckers.note(checker);
                return decision;
            }
        }
        return ConditionEvaluationResult.enabled("every checker is there");
    }

    /**
     * Decides on one checker.
     *
     * @throws IllegalStateException if it is absent and must not be; JUnit makes a failed test of it
     */
    static ConditionEvaluationResult decide(Checker checker, Optional<String> absence, boolean required) {
        if (absence.isEmpty()) {
            return ConditionEvaluationResult.enabled(checker.shownName() + " is there");
        }
        String reason = checker.shownName() + ": " + absence.get();
        if (required) {
            throw new IllegalStateException(reason
                    + ". With -Dcheckers=required no test goes without it: install it with .ci/install-checkers");
        }
        return ConditionEvaluationResult.disabled(reason);
    }
}
