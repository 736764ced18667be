package org.woodyield.checks;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Defines all classes of the project anew, some classes and resources of core changed, so that tables and constants are read
 * once more. Everything else comes from the loader above.
 */
final class OverlayLoader extends ClassLoader {

    /** Bytes as built, kept for all loaders: they are read some thousand times. */
    private static final Map<String, byte[]> AS_BUILT = new ConcurrentHashMap<>();

    private final Map<String, byte[]> changed;

    /**
     * A loader of its own for one change.
     *
     * @param changed content by the place in the class path, for example {@code org/woodyield/scaling/KerfRule.class}; an
     *     empty content is a resource that is not there
     */
    OverlayLoader(Map<String, byte[]> changed) {
        super(OverlayLoader.class.getClassLoader());
        this.changed = changed;
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
        if (!name.startsWith("org.woodyield.")) {
            return super.loadClass(name, resolve);
        }
        synchronized (getClassLoadingLock(name)) {
            Class<?> loaded = findLoadedClass(name);
            return loaded != null ? loaded : define(name);
        }
    }

    private Class<?> define(String name) throws ClassNotFoundException {
        String place = name.replace('.', '/') + ".class";
        byte[] bytes = Objects.requireNonNullElseGet(
                changed.get(place), () -> AS_BUILT.computeIfAbsent(place, this::fromAbove));
        if (bytes.length == 0) {
            throw new ClassNotFoundException(name);
        }
        return defineClass(name, bytes, 0, bytes.length);
    }

    @Override
    public @org.jspecify.annotations.Nullable InputStream getResourceAsStream(String place) {
        byte[] bytes = changed.get(place);
        if (bytes == null) {
            bytes = AS_BUILT.computeIfAbsent(place, this::fromAbove);
        }
        return bytes.length == 0 ? null : new ByteArrayInputStream(bytes);
    }

    private byte[] fromAbove(String place) {
        try (InputStream in = getParent().getResourceAsStream(place)) {
            return in == null ? new byte[0] : in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(place, e);
        }
    }
}
