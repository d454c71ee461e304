// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLogger;
import java.util.logging.Level;

/**
 * Prints nothing. The renderer's log may not simply be switched off: then its complaints reach nobody, and
 * {@link Press} lives by them.
 */
final class Silence implements XRLogger {
    @Override
    public void log(String where, Level level, String message) {}

    @Override
    public void log(String where, Level level, String message, Throwable cause) {}

    @Override
    public void setLevel(String where, Level level) {}

    @Override
    public boolean isLogLevelEnabled(Diagnostic diagnostic) {
        return false;
    }
}
