// SPDX-License-Identifier: Apache-2.0
package landfall.store;

import landfall.fault.Finding;

/** The store cannot be used as it stands: missing, locked, full, damaged, or of a newer program. */
public final class StoreFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Finding finding;

    public StoreFault(String store, String why, String mend, Throwable cause) {
        this(new Finding("store", store, why, mend), cause);
    }

    private StoreFault(Finding finding, Throwable cause) {
        super(finding.sentence(), cause);
        this.finding = finding;
    }

    public Finding finding() {
        return finding;
    }
}
