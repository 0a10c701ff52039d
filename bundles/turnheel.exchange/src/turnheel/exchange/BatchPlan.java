package turnheel.exchange;

import java.io.IOException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Which patterns become which files. Sub-folders are kept; links are followed, and one that leads back to where it came
 * from is left alone.
 *
 * @param folder that the patterns are below
 * @param target folder that the files go below; it is made when it is not there
 * @param items in the order of their paths, whatever the order of the folders on the disk
 * @param unreadable folders that could not be looked into; they do not keep the others from being exported
 */
public record BatchPlan(Path folder, Path target, List<Item> items, List<BatchOutcome> unreadable) {

    /**
     * One pattern.
     *
     * @param source from the batch's folder on
     * @param outputs from the target folder on, one for each format
     */
    public record Item(Path source, List<Path> outputs) {
        public Item {
            outputs = List.copyOf(outputs);
        }
    }

    public BatchPlan {
        items = List.copyOf(items);
        unreadable = List.copyOf(unreadable);
    }

    /**
     * Looks for patterns.
     *
     * @param ending of pattern files, with the dot, in upper or lower case
     * @throws ExportException when there is no such folder, or no pattern in it, or two patterns would be exported to one
     *     file on a disk that does not tell capitals from small letters
     */
    public static BatchPlan of(Path folder, String ending, Path target, List<ExportFormat> formats)
            throws ExportException {
        if (!Files.isDirectory(folder)) {
            throw new ExportException(Words.text(Files.exists(folder) ? "batch.notAFolder" : "batch.noFolder",
                    folder.toString()));
        }
        if (Files.exists(target) && !Files.isDirectory(target)) {
            throw new ExportException(Words.text("batch.targetIsFile", target.toString()));
        }
        Search search = new Search(folder, ending);
        search.run();
        List<Item> items = search.found.stream().sorted(Comparator.comparing(Path::toString))
                .map(source -> new Item(source, outputs(source, ending, formats))).toList();
        if (items.isEmpty() && search.unreadable.isEmpty()) {
            throw new ExportException(Words.text("batch.nothing", folder.toString(), ending));
        }
        requireDistinct(items);
        return new BatchPlan(folder, target, items, search.unreadable);
    }

    private static List<Path> outputs(Path source, String ending, List<ExportFormat> formats) {
        String name = source.getFileName().toString();
        String stem = name.substring(0, name.length() - ending.length());
        return formats.stream().map(format -> source.resolveSibling(stem + format.ending())).toList();
    }

    private static void requireDistinct(List<Item> items) throws ExportException {
        Map<String, Path> taken = new HashMap<>();
        for (Item item : items) {
            for (Path output : item.outputs()) {
                Path other = taken.putIfAbsent(folded(output), item.source());
                if (other != null) {
                    throw new ExportException(Words.text("batch.clash", other.toString(), item.source().toString(),
                            output.toString()));
                }
            }
        }
    }

    /** Alike for names that some disks take for one. */
    private static String folded(Path path) {
        return Normalizer.normalize(path.toString(), Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    }

    /** The files that a run would replace, from the target folder on. */
    public List<Path> existing() {
        return items.stream().flatMap(item -> item.outputs().stream())
                .filter(output -> Files.exists(target.resolve(output), LinkOption.NOFOLLOW_LINKS)).toList();
    }

    /** Walks the folders below one. */
    private static final class Search extends SimpleFileVisitor<Path> {

        private final Path folder;
        private final String ending;
        private final List<Path> found = new ArrayList<>();
        private final List<BatchOutcome> unreadable = new ArrayList<>();

        Search(Path folder, String ending) {
            this.folder = folder;
            this.ending = ending;
        }

        void run() throws ExportException {
            try {
                Files.walkFileTree(folder, EnumSet.of(FileVisitOption.FOLLOW_LINKS), Integer.MAX_VALUE, this);
            } catch (IOException failed) {
                throw new ExportException(Words.text("batch.unreadable", folder.toString(), Words.reason(failed)), failed);
            }
        }

        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            String name = file.getFileName().toString();
            if (name.length() > ending.length() && name.toLowerCase(Locale.ROOT).endsWith(ending)) {
                found.add(folder.relativize(file));
            }
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFileFailed(Path file, IOException failure) {
            // What a loop leads to has been seen already.
            if (!(failure instanceof FileSystemLoopException)) {
                unreadable(file, failure);
            }
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult postVisitDirectory(Path directory, IOException failure) {
            if (failure != null) {
                unreadable(directory, failure);
            }
            return FileVisitResult.CONTINUE;
        }

        private void unreadable(Path place, IOException failure) {
            unreadable.add(BatchOutcome.failed(folder.relativize(place),
                    Words.text("batch.unreadable", place.toString(), Words.reason(failure)), List.of()));
        }
    }
}
