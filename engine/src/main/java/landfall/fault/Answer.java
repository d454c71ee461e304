// SPDX-License-Identifier: Apache-2.0
package landfall.fault;

import java.util.List;
import java.util.function.Function;

/** Either the thing asked for, or every reason why not. */
public sealed interface Answer<T> permits Answer.Of, Answer.Refused {

    record Of<T>(T value) implements Answer<T> {}

    record Refused<T>(List<Finding> findings) implements Answer<T> {
        public Refused {
            findings = List.copyOf(findings);
            if (findings.isEmpty()) {
                throw new IllegalArgumentException("a refusal needs at least one finding");
            }
        }

        /** The same refusal for a question about another type. */
        public <U> Answer<U> again() {
            return new Refused<>(findings);
        }
    }

    static <T> Answer<T> of(T value) {
        return new Of<>(value);
    }

    static <T> Answer<T> refused(List<Finding> findings) {
        return new Refused<>(findings);
    }

    static <T> Answer<T> refused(Finding finding) {
        return new Refused<>(List.of(finding));
    }

    default <U> Answer<U> then(Function<T, Answer<U>> next) {
        if (this instanceof Refused<T> refused) {
            return refused.again();
        }
        return next.apply(((Of<T>) this).value());
    }

    default <U> Answer<U> map(Function<T, U> next) {
        return then(value -> of(next.apply(value)));
    }

    /** The value; for callers that have already judged the input. */
    default T orThrow() {
        if (this instanceof Refused<T> refused) {
            throw new IllegalStateException("refused: " + refused.findings());
        }
        return ((Of<T>) this).value();
    }

    /** The findings; none when there is a value. */
    default List<Finding> findings() {
        return this instanceof Refused<T> refused ? refused.findings : List.of();
    }
}
