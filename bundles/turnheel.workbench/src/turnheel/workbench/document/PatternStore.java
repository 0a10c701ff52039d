package turnheel.workbench.document;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.IProgressMonitor;

import turnheel.model.DocumentException;
import turnheel.model.PatternFiles;
import turnheel.model.pattern.Pattern;

/** Where a pattern is kept: a file of the workspace, or one outside of it. */
public sealed interface PatternStore {

    /** What messages call the file. */
    String name();

    /**
     * Reads it.
     *
     * @throws DocumentException when it is not there or is no pattern that can be read in full
     */
    Pattern load() throws DocumentException;

    /**
     * Writes it, whole or not at all.
     *
     * @throws DocumentException when that failed; the file is then as before
     * @throws CoreException when the workspace refused
     */
    void save(Pattern pattern, IProgressMonitor monitor) throws DocumentException, CoreException;

    /** A number that is another one when somebody else wrote the file; the same as long as nobody did. */
    long stamp();

    /** The file of the workspace; empty outside of it. */
    default Optional<IFile> workspaceFile() {
        return Optional.empty();
    }

    private static long stamp(Path path) {
        try {
            return Files.getLastModifiedTime(path).to(TimeUnit.NANOSECONDS);
        } catch (IOException notThere) {
            return 0;
        }
    }

    /** A file of the workspace. */
    record InWorkspace(IFile file) implements PatternStore {

        @Override
        public String name() {
            return file.getName();
        }

        @Override
        public Optional<IFile> workspaceFile() {
            return Optional.of(file);
        }

        @Override
        public Pattern load() throws DocumentException {
            IPath location = file.getLocation();
            if (location != null) {
                return PatternFiles.load(location.toPath());
            }
            try (InputStream content = file.getContents(true)) {
                return PatternFiles.load(content, file.getName());
            } catch (CoreException | IOException unreadable) {
                return PatternFiles.load(failing(unreadable), file.getName());
            }
        }

        /** The reader of the model then says it in the words of every other file that cannot be read. */
        private static InputStream failing(Exception cause) {
            return new InputStream() {
                @Override
                public int read() throws IOException {
                    throw new IOException(cause.getMessage(), cause);
                }
            };
        }

        @Override
        public void save(Pattern pattern, IProgressMonitor monitor) throws DocumentException, CoreException {
            IPath location = file.getLocation();
            if (location == null) {
                // Another file system than the local one: the workspace is the only way to it.
                InputStream content = new ByteArrayInputStream(PatternFiles.bytes(pattern, file.getName()));
                if (file.exists()) {
                    file.setContents(content, IResource.KEEP_HISTORY, monitor);
                } else {
                    file.create(content, false, monitor);
                }
                return;
            }
            DocumentException[] refused = new DocumentException[1];
            IWorkspace workspace = file.getWorkspace();
            workspace.run(progress -> {
                try {
                    PatternFiles.save(pattern, location.toPath());
                } catch (DocumentException failed) {
                    refused[0] = failed;
                }
                file.refreshLocal(IResource.DEPTH_ZERO, progress);
            }, workspace.getRuleFactory().refreshRule(file), IWorkspace.AVOID_UPDATE, monitor);
            if (refused[0] != null) {
                throw refused[0];
            }
        }

        @Override
        public long stamp() {
            IPath location = file.getLocation();
            return location == null ? file.getModificationStamp() : PatternStore.stamp(location.toPath());
        }
    }

    /** A file outside of the workspace. */
    record Outside(Path path) implements PatternStore {

        @Override
        public String name() {
            return path.getFileName().toString();
        }

        @Override
        public Pattern load() throws DocumentException {
            return PatternFiles.load(path);
        }

        @Override
        public void save(Pattern pattern, IProgressMonitor monitor) throws DocumentException {
            PatternFiles.save(pattern, path);
        }

        @Override
        public long stamp() {
            return PatternStore.stamp(path);
        }
    }
}
