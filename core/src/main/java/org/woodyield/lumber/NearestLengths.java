package org.woodyield.lumber;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.woodyield.measure.Length;

/** Finds the known sizes that lie next to one that is not known. */
final class NearestLengths {

    private static final int MOST = 3;

    private NearestLengths() {}

    /** At most three, nearest first, of two as near the lesser first. */
    static List<Length> to(Length wanted, Collection<Length> known) {
        return known.stream()
                .distinct()
                .sorted(Comparator.comparingLong((Length length) -> distance(wanted, length))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(MOST)
                .toList();
    }

    /** In words, for the remedy of a refusal. */
    static String words(Length wanted, Collection<Length> known) {
        return "nearest: " + all(to(wanted, known));
    }

    /** All of them, as they stand. */
    static String all(Collection<Length> lengths) {
        return String.join(", ", lengths.stream().map(Length::toString).toList());
    }

    static long distance(Length a, Length b) {
        return Math.abs(a.minus(b).toNanometres());
    }
}
