package turnheel.model;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes files that appear whole or not at all, whatever happens on the way. */
public final class WholeFile {

    private WholeFile() {
    }

    /**
     * Puts the content in place of what the file held, if it was there. It is written aside in the same folder, forced
     * to the disk and then renamed; permissions stay, and a link stays a link to the new content.
     *
     * @throws IOException when that failed; then the file is as before and nothing is left beside it
     */
    public static void write(Path file, byte[] content) throws IOException {
        boolean exists = Files.exists(file);
        Path target = exists ? file.toRealPath() : file.toAbsolutePath();
        if (exists && !Files.isWritable(target)) {
            // Renaming over it would succeed: a write-protected file is protected by its folder only.
            throw new AccessDeniedException(file.toString());
        }
        Path aside = target.resolveSibling(".turnheel-" + UUID.randomUUID() + ".tmp");
        try {
            try (FileChannel channel = FileChannel.open(aside,
                    StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                ByteBuffer rest = ByteBuffer.wrap(content);
                while (rest.hasRemaining()) {
                    channel.write(rest);
                }
                channel.force(true);
            }
            if (exists && isPosix(target)) {
                Files.setPosixFilePermissions(aside, Files.getPosixFilePermissions(target));
            }
            Files.move(aside, target, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(aside);
        }
        if (isPosix(target)) {
            // The new name is on the disk when its folder is; other systems cannot open a folder for that.
            try (FileChannel folder = FileChannel.open(target.getParent(), StandardOpenOption.READ)) {
                folder.force(true);
            }
        }
    }

    private static boolean isPosix(Path path) {
        return path.getFileSystem().supportedFileAttributeViews().contains("posix");
    }
}
