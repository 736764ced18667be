package org.woodyield.wood;

/** How many letters must be put in, taken out, replaced or changed over with a neighbour to make one name another. */
final class EditDistance {

    private EditDistance() {}

    static int between(String a, String b) {
        int[][] best = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    best[i][j] = i + j;
                    continue;
                }
                boolean same = a.charAt(i - 1) == b.charAt(j - 1);
                int cost = Math.min(best[i - 1][j], best[i][j - 1]) + 1;
                cost = Math.min(cost, best[i - 1][j - 1] + (same ? 0 : 1));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    cost = Math.min(cost, best[i - 2][j - 2] + 1);
                }
                best[i][j] = cost;
            }
        }
        return best[a.length()][b.length()];
    }
}
