package org.woodyield.lumber;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;

/**
 * A table of sizes to be read both ways: from the size by which lumber is named to what it measures, and back. It holds what
 * the classes of this package hold, in one form for all countries; nothing here is computed that they do not compute.
 *
 * @param key stable, lower case with hyphens, for example {@code softwood}
 * @param title what it holds
 * @param metric whether a size without unit means millimetres; otherwise inches
 * @param entries in the order of the publication
 * @param facts what the publication says beside its sizes
 */
public record SizeTable(String key, String title, boolean metric, List<Entry> entries, List<Fact> facts) {

    /** The face of an entry that holds for thickness and width alike. */
    public static final String EITHER = "thickness or width";

    /**
     * One named size of one face.
     *
     * @param kind the class, pattern or condition within which thickness and width go together
     * @param face {@code thickness}, {@code width}, {@code face width} or {@link SizeTable#EITHER}
     * @param nominal the size by which it is named
     * @param measures what it measures; none where the name is the measure
     * @param source the publication
     * @param note a doubt or a condition, possibly empty
     */
    public record Entry(String kind, String face, Length nominal, List<Measure> measures, Source source, String note) {
        /** Keeps an immutable copy. */
        public Entry {
            measures = List.copyOf(measures);
        }

        private boolean isFor(String wanted) {
            return face.equals(wanted) || face.equals(EITHER);
        }
    }

    /**
     * What a named size measures.
     *
     * @param state in which, for example {@code dry}
     * @param length what it measures then
     */
    public record Measure(String state, Length length) {}

    /**
     * Something that is no size of one face.
     *
     * @param statement a sentence
     * @param source who says so
     */
    public record Fact(String statement, Source source) {}

    /**
     * A thickness and a width that go together.
     *
     * @param thickness the one face
     * @param width the other
     */
    public record Section(Entry thickness, Entry width) {}

    /** Keeps immutable copies. */
    public SizeTable {
        entries = List.copyOf(entries);
        facts = List.copyOf(facts);
    }

    /**
     * All tables, softwood first.
     *
     * @return an immutable list
     */
    public static List<SizeTable> all() {
        return SizeTables.ALL;
    }

    /**
     * A table by its key.
     *
     * @param key for example {@code softwood}
     * @return the table
     * @throws OutOfDomainException if there is none; the limits name those there are
     */
    public static SizeTable named(String key) {
        return all().stream()
                .filter(table -> table.key.equals(key))
                .findFirst()
                .orElseThrow(() -> new OutOfDomainException(
                        "table of sizes",
                        "'" + key + "'",
                        "",
                        all().stream().map(SizeTable::key).collect(Collectors.joining(", ")),
                        ""));
    }

    /**
     * The entries of one face by the size that names them.
     *
     * @param nominal the size
     * @return one or more
     * @throws OutOfDomainException if the table names none so; the limits give all that it names
     */
    public List<Entry> ofNominal(Length nominal) {
        List<Entry> found = entries.stream()
                .filter(entry -> entry.nominal().equals(nominal))
                .toList();
        if (found.isEmpty()) {
            throw unknown("nominal size", nominal, entries.stream().map(Entry::nominal));
        }
        return found;
    }

    /**
     * The sections by the size that names them.
     *
     * @param thickness the lesser face
     * @param width the other
     * @return one or more; each kind of the table that has both faces
     * @throws OutOfDomainException if the table names no such section; the limits give what goes with that thickness
     */
    public List<Section> ofNominal(Length thickness, Length width) {
        return sections(thickness, width, "nominal", entry -> Stream.of(entry.nominal()));
    }

    /**
     * The entries of one face by what it measures in any state.
     *
     * @param measured the size
     * @return one or more
     * @throws OutOfDomainException if nothing measures so; the remedy gives the nearest
     */
    public List<Entry> ofMeasured(Length measured) {
        List<Entry> found = entries.stream()
                .filter(entry -> lengths(entry).anyMatch(measured::equals))
                .toList();
        if (found.isEmpty()) {
            throw unknown("measured size", measured, entries.stream().flatMap(SizeTable::lengths));
        }
        return found;
    }

    /**
     * The sections by what they measure, both faces in the same state.
     *
     * @param thickness the lesser face
     * @param width the other
     * @return one or more
     * @throws OutOfDomainException if nothing measures so; the limits give what goes with that thickness
     */
    public List<Section> ofMeasured(Length thickness, Length width) {
        return sections(thickness, width, "measured", SizeTable::lengths).stream()
                .filter(section -> section.thickness().measures().isEmpty()
                        || section.thickness().measures().stream()
                                .filter(measure -> measure.length().equals(thickness))
                                .anyMatch(measure ->
                                        section.width().measures().contains(new Measure(measure.state(), width))))
                .collect(Collectors.collectingAndThen(Collectors.toList(), found -> {
                    if (found.isEmpty()) {
                        throw new OutOfDomainException(
                                "measured size",
                                text(thickness) + " x " + text(width),
                                "",
                                "both faces in the same state",
                                "ask for each face alone");
                    }
                    return List.copyOf(found);
                }));
    }

    /** What a face measures; its name where that is the measure. */
    private static Stream<Length> lengths(Entry entry) {
        return entry.measures().isEmpty()
                ? Stream.of(entry.nominal())
                : entry.measures().stream().map(Measure::length);
    }

    private List<Section> sections(Length thickness, Length width, String how, Function<Entry, Stream<Length>> sizes) {
        if (width.compareTo(thickness) < 0) {
            throw new OutOfDomainException(
                    how + " width",
                    text(width),
                    "",
                    "from the thickness, " + text(thickness),
                    "write the thickness first");
        }
        boolean pairs = entries.stream()
                .anyMatch(one ->
                        one.isFor(SoftwoodSizes.THICKNESS) && entries.stream().anyMatch(entry -> goesWith(one, entry)));
        if (!pairs) {
            throw new OutOfDomainException(
                    how + " size",
                    text(thickness) + " x " + text(width),
                    "",
                    "one face: this table pairs no thickness with a width",
                    "ask for each face alone");
        }
        List<Entry> thick = entries.stream()
                .filter(entry -> entry.isFor(SoftwoodSizes.THICKNESS)
                        && sizes.apply(entry).anyMatch(thickness::equals))
                .toList();
        if (thick.isEmpty()) {
            throw unknown(how + " thickness", thickness, faces(SoftwoodSizes.THICKNESS, sizes));
        }
        List<Section> found = new ArrayList<>();
        for (Entry one : thick) {
            entries.stream()
                    .filter(entry -> goesWith(one, entry) && sizes.apply(entry).anyMatch(width::equals))
                    .forEach(entry -> found.add(new Section(one, entry)));
        }
        if (found.isEmpty()) {
            throw unknown(
                    how + " width",
                    width,
                    entries.stream()
                            .filter(entry -> thick.stream().anyMatch(one -> goesWith(one, entry)))
                            .flatMap(sizes)
                            .filter(size -> size.compareTo(thickness) >= 0));
        }
        return List.copyOf(found);
    }

    private static boolean goesWith(Entry thickness, Entry width) {
        return width.isFor(SoftwoodSizes.WIDTH) && width.kind().equals(thickness.kind());
    }

    private Stream<Length> faces(String face, Function<Entry, Stream<Length>> sizes) {
        return entries.stream().filter(entry -> entry.isFor(face)).flatMap(sizes);
    }

    private OutOfDomainException unknown(String parameter, Length value, Stream<Length> known) {
        Set<Length> sizes = known.collect(Collectors.toCollection(TreeSet::new));
        if (sizes.isEmpty()) {
            return new OutOfDomainException(
                    parameter, text(value), "", "none: the table " + key + " has no such size", "");
        }
        return new OutOfDomainException(
                parameter, text(value), "", listed(sizes), "nearest: " + listed(NearestLengths.to(value, sizes)));
    }

    private String listed(Collection<Length> sizes) {
        return sizes.stream().map(this::text).collect(Collectors.joining(", "));
    }

    /**
     * A size as this table writes it.
     *
     * @param size any length
     * @return millimetres in a metric table; otherwise inches where that is a fraction
     */
    public String text(Length size) {
        return metric ? plain(size.toMillimetres()) + " mm" : size.toString();
    }

    /** Without a point where it is whole. */
    static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
