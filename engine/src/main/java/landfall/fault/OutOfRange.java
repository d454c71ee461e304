// SPDX-License-Identifier: Apache-2.0
package landfall.fault;

/**
 * A formula asked outside its range: what, given, allowed, mend. The command line and the pages turn it into a
 * {@link Finding}; nothing catches it to go on with another figure.
 */
public final class OutOfRange extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final Finding finding;

    public OutOfRange(String what, String given, String allowed, String mend) {
        this(new Finding(what, given, "must be " + allowed, mend));
    }

    public OutOfRange(Finding finding) {
        super(finding.sentence());
        this.finding = finding;
    }

    public Finding finding() {
        return finding;
    }
}
