// SPDX-License-Identifier: Apache-2.0
package landfall.store.backup;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/** A new file that nobody but its owner may read or write, from its first byte on. */
final class OwnersFile {
    private static final String OWNER_ALONE = "rw-------";

    private OwnersFile() {}

    /**
     * What was left there under that name is taken away. Where the folder knows no owners, the file is as any other.
     */
    static OutputStream create(Path file) throws IOException {
        Files.deleteIfExists(file);
        Set<StandardOpenOption> how = Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        boolean owners = file.getFileSystem().supportedFileAttributeViews().contains("posix");
        FileAttribute<?>[] attributes = owners
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(OWNER_ALONE))
                }
                : new FileAttribute<?>[0];
        return Channels.newOutputStream(Files.newByteChannel(file, how, attributes));
    }
}
