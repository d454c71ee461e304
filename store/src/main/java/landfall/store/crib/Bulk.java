// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.sql.PreparedStatement;
import java.sql.SQLException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementException;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;

/** One statement of a transaction, sent for many rows at a time. Texts and whole numbers only. */
final class Bulk {
    private static final int MOST = 1000;

    private final Handle handle;
    private final PreparedStatement statement;
    private int waiting;

    Bulk(Handle handle, String sql) {
        this.handle = handle;
        try {
            statement = handle.getConnection().prepareStatement(sql);
        } catch (SQLException e) {
            throw fault(handle, e);
        }
    }

    /** Whether it is time to send. */
    boolean row(Object... values) {
        try {
            for (int i = 0; i < values.length; i++) {
                if (values[i] instanceof Long number) {
                    statement.setLong(i + 1, number);
                } else {
                    statement.setString(i + 1, (String) values[i]);
                }
            }
            statement.addBatch();
            return ++waiting >= MOST;
        } catch (SQLException e) {
            throw fault(handle, e);
        }
    }

    void send() {
        if (waiting == 0) {
            return;
        }
        waiting = 0;
        try {
            for (int count : statement.executeBatch()) {
                if (count == 0) {
                    throw new IllegalStateException("another writer inside the transaction: " + statement);
                }
            }
        } catch (SQLException e) {
            throw fault(handle, e);
        }
    }

    void close() {
        try {
            statement.close();
        } catch (SQLException e) {
            throw fault(handle, e);
        }
    }

    static StatementException fault(Handle handle, SQLException e) {
        return new UnableToExecuteStatementException(
                e, handle.createQuery("bulk").getContext());
    }
}
