// SPDX-License-Identifier: Apache-2.0
package landfall.app.methods;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The notes and the bibliography that the build copied into the program. Read once, when somebody looks. */
final class Notes {
    private static final String FOLDER = "/landfall/methods";
    private static final String BIBLIOGRAPHY = FOLDER + "/sources.bib";

    private final List<Note> notes;
    private final List<Publication> publications;

    private Notes(List<Note> notes, List<Publication> publications) {
        this.notes = notes;
        this.publications = publications;
    }

    private static final class Held {
        static final Notes NOTES = read();
    }

    static Notes held() {
        return Held.NOTES;
    }

    List<Note> all() {
        return notes;
    }

    Optional<Note> of(String name) {
        return notes.stream().filter(note -> note.name().equals(name)).findFirst();
    }

    List<Publication> publications() {
        return publications;
    }

    private static Notes read() {
        URL bibliography = Notes.class.getResource(BIBLIOGRAPHY);
        if (bibliography == null) {
            throw new IllegalStateException("the program is not whole, it lacks " + BIBLIOGRAPHY);
        }
        try {
            URI uri = bibliography.toURI();
            if (!uri.getScheme().equals("jar")) {
                return in(Path.of(uri).resolveSibling("."));
            }
            try (FileSystem jar = FileSystems.newFileSystem(uri, Map.of())) {
                return in(jar.getPath(FOLDER));
            }
        } catch (URISyntaxException e) {
            throw new IllegalStateException("not an address: " + bibliography, e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Notes in(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            List<Note> notes = files.filter(file -> file.toString().endsWith(".md"))
                    .map(Notes::note)
                    .sorted(java.util.Comparator.comparing(Note::title))
                    .toList();
            return new Notes(notes, Publication.read(Files.readString(folder.resolve("sources.bib"))));
        }
    }

    private static Note note(Path file) {
        try {
            String name = file.getFileName().toString();
            return Note.of(name.substring(0, name.length() - ".md".length()), Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
