// SPDX-License-Identifier: Apache-2.0
package landfall.app.people;

import java.util.regex.Pattern;

/** Where a person goes on to after signing in: an address of this server and of no other. */
final class OwnPath {
    static final String USUAL = "/crib";
    private static final int LONGEST = 8000;

    /**
     * One slash and no second one, no backslash, no control character: browsers take each of those for another server.
     */
    private static final Pattern OWN = Pattern.compile("/(?![/\\\\])[A-Za-z0-9._~!$&'()*+,;=:@%/?-]*");

    private OwnPath() {}

    /** The path that was asked for, or the crib where it is none of ours. */
    static String of(String asked) {
        return asked.length() <= LONGEST && OWN.matcher(asked).matches() ? asked : USUAL;
    }
}
