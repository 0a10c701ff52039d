package turnheel.exchange;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes files that appear whole or not at all. */
final class WholeFile {

    private WholeFile() {
    }

    /**
     * Writes aside in the same folder, forces the bytes to the disk and renames. Over a file that exists, a link
     * stays a link and permissions stay.
     *
     * @throws FileAlreadyExistsException when the target is there and {@code replace} was not given
     * @throws IOException when writing failed; then the target is as before and nothing is left beside it
     */
    static void write(Path target, byte[] content, boolean replace) throws IOException {
        boolean exists = Files.exists(target);
        Path file = exists ? target.toRealPath() : target.toAbsolutePath();
        Path aside = file.resolveSibling(".turnheel-" + UUID.randomUUID() + ".part");
        try {
            try (FileChannel channel = FileChannel.open(aside, StandardOpenOption.CREATE_NEW,
                    StandardOpenOption.WRITE)) {
                ByteBuffer rest = ByteBuffer.wrap(content);
                while (rest.hasRemaining()) {
                    channel.write(rest);
                }
                channel.force(true);
            }
            if (replace) {
                if (exists && isPosix(file)) {
                    Files.setPosixFilePermissions(aside, Files.getPosixFilePermissions(file));
                }
                Files.move(aside, file, StandardCopyOption.ATOMIC_MOVE);
            } else {
                // Without REPLACE_EXISTING, a file that somebody made meanwhile is left alone.
                Files.move(aside, file);
            }
        } finally {
            Files.deleteIfExists(aside);
        }
    }

    private static boolean isPosix(Path path) {
        return path.getFileSystem().supportedFileAttributeViews().contains("posix");
    }
}
