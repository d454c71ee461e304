// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import landfall.fault.Answer;
import landfall.fault.Finding;

/** Reads a file that was named on the command line; one that cannot be read is refused, with the reason. */
final class InputFile {
    /** A card is some kilobytes, a long set of readings some hundreds. */
    static final long GREATEST = 4L * 1024 * 1024;

    private InputFile() {}

    /** The text of a file; a byte-order mark is left off. */
    static Answer<String> text(String field, String name) {
        try {
            Path path = Path.of(name);
            if (Files.isDirectory(path)) {
                return refused(field, name, "is a folder, not a file", "name the file in it");
            }
            if (Files.exists(path) && Files.size(path) > GREATEST) {
                return refused(field, name, "is over 4 MB", "give a card or a set of readings");
            }
            String text = Files.readString(path);
            return Answer.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (NoSuchFileException e) {
            return refused(field, name, "is not there", "check the name and the folder");
        } catch (InvalidPathException e) {
            return refused(field, name, "cannot be the name of a file", "check the name");
        } catch (CharacterCodingException e) {
            return refused(field, name, "is not text in UTF-8", "save it as UTF-8");
        } catch (IOException e) {
            return refused(field, name, "cannot be read", "check that you may read it");
        }
    }

    private static Answer<String> refused(String field, String name, String why, String mend) {
        return Answer.refused(new Finding(field, name, why, mend));
    }
}
