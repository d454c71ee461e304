// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import landfall.app.build.Build;

/** What the program says of itself, for programs: its version, its commands, the help of one of them. */
final class AboutJson {
    private interface Part {
        void to(JsonGenerator out) throws IOException;
    }

    private AboutJson() {}

    static String version(Build build) {
        return made(out -> {
            out.writeStringField("version", build.version());
            out.writeStringField("commit", build.commit());
        });
    }

    static String commands(List<Command> all) {
        return made(out -> {
            out.writeArrayFieldStart("commands");
            for (Command command : all) {
                out.writeStartObject();
                out.writeStringField("noun", command.noun());
                out.writeStringField("means", command.summary());
                out.writeEndObject();
            }
            out.writeEndArray();
        });
    }

    static String help(Command command) {
        return made(out -> {
            out.writeStringField("noun", command.noun());
            out.writeStringField("means", command.summary());
            out.writeStringField("help", command.help());
        });
    }

    private static String made(Part part) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = new JsonFactory().createGenerator(text)) {
            out.writeStartObject();
            part.to(out);
            out.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
