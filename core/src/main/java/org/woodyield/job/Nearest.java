package org.woodyield.job;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Finds what somebody may have meant to write. */
final class Nearest {

    private Nearest() {}

    /** The candidates within a third of the word's length in edits, nearest first, at most three. */
    static List<String> to(String word, Collection<String> candidates) {
        int limit = Math.max(1, word.length() / 3);
        return candidates.stream()
                .filter(candidate -> edits(word, candidate) <= limit)
                .sorted(Comparator.comparingInt((String candidate) -> edits(word, candidate))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(3)
                .toList();
    }

    /** A question that names the nearest candidates, empty where none is near. */
    static String question(String word, Collection<String> candidates) {
        List<String> near = to(word, candidates);
        return near.isEmpty() ? "" : "is " + String.join(" or ", near) + " meant?";
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
