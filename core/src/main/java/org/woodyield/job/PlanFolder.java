package org.woodyield.job;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A folder that is written whole or not at all. All files go into a new folder beside it, which then takes its name in one
 * move; a reader sees the old folder or the new one and never a part of either.
 */
final class PlanFolder {

    private final Path target;

    private PlanFolder(Path target) {
        this.target = target;
    }

    /**
     * A folder to write to, checked before any work is done.
     *
     * @param name as the user wrote it
     * @param own names of the files that may be replaced; none where nothing may
     * @param replace whether a folder that holds nothing but such files may be replaced
     * @throws BadInputException if it cannot be written or holds what is not ours
     */
    static PlanFolder of(String name, Set<String> own, boolean replace) {
        Path target;
        try {
            target = Path.of(name).toAbsolutePath().normalize();
        } catch (InvalidPathException e) {
            throw refused(name, "is not a path", "choose another name");
        }
        try {
            if (Files.exists(target)) {
                // A link is followed: the folder it leads to is what gets replaced, not the link.
                target = target.toRealPath();
            } else if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
                throw refused(name, "is a link that leads nowhere", "remove the link, or choose another folder");
            }
            if (Path.of("").toAbsolutePath().startsWith(target)) {
                throw refused(name, "is the folder you stand in, or one above it", "choose another folder");
            }
            if (Files.exists(target)) {
                requireOurs(name, target, own, replace);
            }
            Path parent = target.getParent();
            if (parent == null) {
                throw refused(name, "is the root", "choose another folder");
            }
            // Folders above that are missing are made when there is something to write.
            Path above = parent;
            while (!Files.exists(above, LinkOption.NOFOLLOW_LINKS) && above.getParent() != null) {
                above = above.getParent();
            }
            if (!Files.isDirectory(above)) {
                throw refused(name, "would stand below " + above + ", which is no folder", "choose another folder");
            }
            if (!Files.isWritable(above)) {
                throw refused(name, "cannot be written: no permission in " + above, "choose another folder");
            }
        } catch (IOException e) {
            throw refused(name, reason(e), "choose another folder");
        }
        return new PlanFolder(target);
    }

    private static void requireOurs(String name, Path target, Set<String> own, boolean replace) throws IOException {
        if (!Files.isDirectory(target)) {
            throw refused(name, "is a file", "choose a folder");
        }
        if (!Files.isWritable(target)) {
            throw refused(name, "cannot be written: no permission", "choose another folder");
        }
        List<Path> there;
        try (Stream<Path> entries = Files.list(target)) {
            there = entries.sorted().toList();
        }
        if (there.isEmpty()) {
            return;
        }
        if (!replace) {
            throw refused(
                    name,
                    "is not empty",
                    "choose a new folder"
                            + (own.isEmpty() ? "" : ", or add --replace if an earlier result stands there"));
        }
        Optional<Path> foreign = there.stream()
                .filter(path -> !own.contains(path.getFileName().toString())
                        || !Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS))
                .findFirst();
        if (foreign.isPresent()) {
            throw refused(
                    name,
                    "holds " + foreign.get().getFileName() + ", which is not written here",
                    "move it away, or choose another folder; nothing was written");
        }
    }

    /**
     * Writes the files.
     *
     * @param files name to content
     * @return the folder
     * @throws BadInputException if the folder cannot be written; then nothing has changed
     */
    Path write(Map<String, byte[]> files) {
        Path staged = beside("part");
        List<Path> missing = missingAbove();
        // An interrupt ends the program while files are being written; the unfinished folder goes with it.
        Thread cleaner = new Thread(() -> clear(staged, missing));
        Runtime.getRuntime().addShutdownHook(cleaner);
        try {
            for (Path folder : missing) {
                Files.createDirectory(folder);
            }
            Files.createDirectory(staged);
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Files.write(staged.resolve(file.getKey()), file.getValue());
            }
            putInPlace(staged);
            return target;
        } catch (IOException e) {
            throw refused(target.toString(), reason(e), "choose another folder; nothing was written");
        } finally {
            clear(staged, missing);
            unhook(cleaner);
        }
    }

    /** The folders above that are not there, from the top down. */
    private List<Path> missingAbove() {
        Deque<Path> missing = new ArrayDeque<>();
        Path above = target.getParent();
        while (above != null && !Files.exists(above)) {
            missing.addFirst(above);
            above = above.getParent();
        }
        return List.copyOf(missing);
    }

    /** Takes away what is unfinished, and the folders made above it where nothing came to stand in them. */
    private static void clear(Path staged, List<Path> made) {
        remove(staged);
        for (int i = made.size() - 1; i >= 0; i--) {
            try {
                Files.deleteIfExists(made.get(i));
            } catch (IOException e) {
                // It is not empty, or was there before.
                return;
            }
        }
    }

    private void putInPlace(Path staged) throws IOException {
        if (!Files.exists(target)) {
            move(staged, target);
            return;
        }
        Path old = beside("old");
        move(target, old);
        try {
            move(staged, target);
        } catch (IOException e) {
            move(old, target);
            throw e;
        }
        remove(old);
    }

    private Path beside(String purpose) {
        return target.resolveSibling("." + target.getFileName() + "." + purpose + "-"
                + ProcessHandle.current().pid());
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to);
        }
    }

    /** Removes a folder of plain files; what cannot be removed stays, and does no harm. */
    private static void remove(Path folder) {
        try (Stream<Path> entries = Files.list(folder)) {
            for (Path entry : entries.toList()) {
                Files.deleteIfExists(entry);
            }
            Files.deleteIfExists(folder);
        } catch (IOException e) {
            return;
        }
    }

    private static void unhook(Thread cleaner) {
        try {
            Runtime.getRuntime().removeShutdownHook(cleaner);
        } catch (IllegalStateException e) {
            // The program is ending already, and the hook does its work.
            return;
        }
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "cannot be written: no permission";
        }
        if (e instanceof FileSystemException failure && failure.getReason() != null) {
            return "cannot be written: " + failure.getReason();
        }
        return "cannot be written: " + e.getMessage();
    }

    private static BadInputException refused(String name, String what, String remedy) {
        return new BadInputException("output folder '" + name + "' " + what + "; " + remedy);
    }
}
