// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import landfall.app.example.Examples;
import landfall.app.serve.Listen;
import landfall.app.serve.WebServer;

/**
 * Run once by the launcher after a build, so that the class-data archive holds what real runs load: one answer of every
 * kind, the pages, and a sheet on paper. It is not in the help, as it is of no use to a person.
 */
final class RehearseCommand implements Command {
    @Override
    public String noun() {
        return "rehearse";
    }

    @Override
    public String summary() {
        return "";
    }

    @Override
    public String help() {
        return "";
    }

    @Override
    public Map<String, Options> written() {
        return Map.of();
    }

    @Override
    public Exit run(List<String> args, Terminal terminal) {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        Terminal silent = new Terminal(new ByteArrayInputStream(new byte[0]), nowhere, nowhere);
        Commands commands = new Commands();
        try {
            Path folder = Files.createTempDirectory("landfall-rehearsal");
            commands.run(List.of("demo", "--into", folder.toString()), silent);
            String tap = folder.resolve(DemoCommand.TAP).toString();
            String fixture = folder.resolve(DemoCommand.FIXTURE).toString();
            commands.run(List.of("grind", tap, "--fixture", fixture, "--json"), silent);
            commands.run(List.of("grind", tap, "--fixture", tap), silent);
            commands.run(List.of("thread", "M8x1.25-6H"), silent);
            commands.run(List.of("thread", "1/4-20 UNC-2B", "--json"), silent);
            commands.run(List.of("help", "grind"), silent);
            pages();
            for (Path file : List.of(
                    folder.resolve(DemoCommand.TAP),
                    folder.resolve(DemoCommand.FIXTURE),
                    folder.resolve(DemoCommand.TEXT),
                    folder.resolve(DemoCommand.PDF),
                    folder)) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            terminal.err().println("landfall: the rehearsal was cut short: " + e);
            return Exit.FAULT;
        }
        return Exit.DONE;
    }

    private static void pages() throws IOException {
        WebServer server = WebServer.start(Listen.anywhereOnThisMachine());
        try {
            for (String path : List.of(
                    "/", "/thread?thread=M8x1.25-6H", Examples.all().get(0).address(), "/methods")) {
                ask(server.port(), path);
            }
        } finally {
            server.stop();
        }
    }

    private static void ask(int port, String path) throws IOException {
        try (Socket socket = new Socket(Listen.LOOPBACK, port)) {
            String request = "GET " + path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            socket.getInputStream().readAllBytes();
        }
    }
}
