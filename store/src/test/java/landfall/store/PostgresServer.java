// SPDX-License-Identifier: Apache-2.0
package landfall.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A PostgreSQL server of Debian's package, on the loopback, for as long as the tests run. */
public final class PostgresServer {
    private static final PostgresServer ONE = started();

    private final Path data;
    private final Path programs;
    private final int port;
    private int bases;

    private PostgresServer(Path data, Path programs, int port) {
        this.data = data;
        this.programs = programs;
        this.port = port;
    }

    /** A new, empty database. */
    public static synchronized StoreAddress.OnServer newBase() {
        String name = "crib" + ++ONE.bases;
        try (Connection connection = DriverManager.getConnection(ONE.jdbc("postgres"), "shop", "")) {
            connection.createStatement().execute("create database " + name);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
        return (StoreAddress.OnServer) StoreAddress.read("postgresql://shop@127.0.0.1:" + ONE.port + "/" + name)
                .orThrow();
    }

    /** A database as a script that makes it again. */
    static String script(StoreAddress.OnServer address) {
        try {
            String base = address.jdbc().replaceFirst(".*/", "");
            Path file = ONE.data.resolve(base + ".sql");
            ONE.as(
                    "pg_dump",
                    "--inserts",
                    "--no-owner",
                    "--no-privileges",
                    "-h",
                    "127.0.0.1",
                    "-p",
                    String.valueOf(ONE.port),
                    "-U",
                    "shop",
                    "-f",
                    file.toString(),
                    base);
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String jdbc(String base) {
        return "jdbc:postgresql://127.0.0.1:" + port + "/" + base;
    }

    private static PostgresServer started() {
        try {
            Path programs = programs();
            Path data = Files.createTempDirectory(
                    "postgres", PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwxrwxrwx")));
            int port = freePort();
            PostgresServer server = new PostgresServer(data, programs, port);
            if (isRoot()) {
                run(List.of("chown", "postgres", data.toString()));
            }
            server.as("initdb", "-D", data + "/base", "-A", "trust", "-U", "shop", "-E", "UTF8", "--no-sync");
            server.as(
                    "pg_ctl",
                    "-D",
                    data + "/base",
                    "-w",
                    "-s",
                    "-l",
                    data + "/log",
                    "-o",
                    "-h 127.0.0.1 -p " + port + " -k " + data + " -c fsync=off",
                    "start");
            Runtime.getRuntime().addShutdownHook(new Thread(server::stop));
            return server;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void stop() {
        as("pg_ctl", "-D", data + "/base", "-m", "immediate", "-s", "stop");
        run(List.of("rm", "-rf", data.toString()));
    }

    private void as(String program, String... arguments) {
        List<String> command = new ArrayList<>();
        if (isRoot()) {
            command.addAll(List.of("setpriv", "--reuid=postgres", "--regid=postgres", "--clear-groups"));
        }
        command.add(programs.resolve(program).toString());
        command.addAll(List.of(arguments));
        run(command);
    }

    private static boolean isRoot() {
        return "root".equals(System.getProperty("user.name"));
    }

    /** Debian keeps the server's programs in a folder for each version. */
    private static Path programs() throws IOException {
        Path versions = Path.of("/usr/lib/postgresql");
        if (!Files.isDirectory(versions)) {
            throw new IllegalStateException("PostgreSQL is not installed: apt-get install postgresql");
        }
        try (Stream<Path> all = Files.list(versions)) {
            return all.map(version -> version.resolve("bin"))
                    .filter(bin -> Files.isExecutable(bin.resolve("initdb")))
                    .max(Comparator.naturalOrder())
                    .orElseThrow();
        }
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    private static void run(List<String> command) {
        try {
            Path said = Files.createTempFile("said", ".txt");
            Process process = new ProcessBuilder(command)
                    .directory(Path.of("/").toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(said.toFile())
                    .start();
            int code = process.waitFor();
            String text = Files.readString(said);
            Files.delete(said);
            if (code != 0) {
                throw new IllegalStateException(command + ": " + text);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
