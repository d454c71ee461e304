// SPDX-License-Identifier: Apache-2.0
package landfall.store.people;

import java.time.Instant;

/**
 * Somebody of the shop.
 *
 * @param shown how the person is called on pages
 * @param active whether the person may sign in; who left is closed, not forgotten, since events bear the name
 */
public record Person(PersonName name, String shown, Role role, boolean active, Instant since) {}
