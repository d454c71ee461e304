// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.thread;

import landfall.sheets.draw.Lettering;

/** Words and figures of one size, so that a drawing as wide as a phone can be read at arm's length: 14 px there. */
final class Letters {
    static final Lettering NOTE = Lettering.NOTE.sized(Lettering.FIGURE.size());

    private Letters() {}
}
