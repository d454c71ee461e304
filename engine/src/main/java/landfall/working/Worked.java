// SPDX-License-Identifier: Apache-2.0
package landfall.working;

import java.util.List;
import java.util.function.Function;

/** A result, and the steps to it, which are made by running the same computation again when somebody looks. */
public final class Worked<T> {
    private final Function<Pen, T> computation;
    private final T value;

    private Worked(Function<Pen, T> computation) {
        this.computation = computation;
        this.value = computation.apply(Pen.NONE);
    }

    public static <T> Worked<T> of(Function<Pen, T> computation) {
        return new Worked<>(computation);
    }

    public T value() {
        return value;
    }

    public List<Step> steps() {
        Recorded pen = new Recorded();
        // the value is held already; this run is for its steps
        T unused = computation.apply(pen);
        return pen.steps();
    }
}
