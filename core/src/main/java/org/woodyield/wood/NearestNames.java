package org.woodyield.wood;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Finds which of some names somebody may have meant to write. */
public final class NearestNames {

    private static final int MOST = 3;
    private static final int SHORTEST_ABBREVIATION = 3;

    private NearestNames() {}

    /**
     * The names near a word, at most three: those within a third of its letters in edits, nearest first, for which the part of a
     * name before its first comma will do; where there is none, those that hold all words written; where there is none
     * either, those that the word abbreviates.
     *
     * @param word as somebody wrote it
     * @param names what may be written
     * @return some of the names, possibly none
     */
    public static List<String> to(String word, Collection<String> names) {
        String wanted = normal(word);
        int limit = Math.max(1, wanted.length() / 3);
        List<String> near = names.stream()
                .filter(name -> distance(wanted, name) <= limit)
                .sorted(Comparator.comparingInt((String name) -> distance(wanted, name))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(MOST)
                .toList();
        if (!near.isEmpty() || wanted.length() < SHORTEST_ABBREVIATION) {
            return near;
        }
        List<String> words = List.of(wanted.split(" ", -1));
        List<String> holding = names.stream()
                .filter(name -> List.of(normal(name).split(" ", -1)).containsAll(words))
                .limit(MOST)
                .toList();
        return holding.isEmpty()
                ? names.stream()
                        .filter(name -> abbreviates(wanted, normal(name)))
                        .limit(MOST)
                        .toList()
                : holding;
    }

    /**
     * A question that names the names near a word.
     *
     * @param word as somebody wrote it
     * @param names what may be written
     * @return for example {@code is kerf meant?}; empty where none is near
     */
    public static String question(String word, Collection<String> names) {
        List<String> near = to(word, names);
        return near.isEmpty() ? "" : "is " + String.join(" or ", near) + " meant?";
    }

    private static int distance(String wanted, String name) {
        int comma = name.indexOf(',');
        int whole = edits(wanted, normal(name));
        return comma < 0 ? whole : Math.min(whole, edits(wanted, normal(name.substring(0, comma))));
    }

    /** A name as it is compared: letters and figures in lower case, whatever stands between them a space. */
    static String normal(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }

    /** Whether a name begins with the same letter and has the others behind it in the same order. */
    private static boolean abbreviates(String wanted, String name) {
        int at = name.startsWith(wanted.substring(0, 1)) ? 0 : -1;
        for (int i = 1; i < wanted.length() && at >= 0; i++) {
            at = name.indexOf(wanted.charAt(i), at + 1);
        }
        return at >= 0;
    }

    /** Least count of letters to insert, delete, replace, or swap with the next. */
    static int edits(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    cost[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int least = Math.min(cost[i - 1][j - 1] + change, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    least = Math.min(least, cost[i - 2][j - 2] + 1);
                }
                cost[i][j] = least;
            }
        }
        return cost[a.length()][b.length()];
    }
}
