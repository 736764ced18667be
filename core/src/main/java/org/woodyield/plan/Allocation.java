package org.woodyield.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Shares logs out over a list of what is wanted.
 *
 * <p>Worth of a plan: for each item, its worth times what is needed of it at most, a set share of that worth for each
 * unit beyond, less the cost of passes. It is concave in the amounts, so prices between the surplus worth and the full
 * worth give an upper bound: at prices {@code l}, no plan is worth more than the sum over logs of the best cut at {@code
 * l}, plus {@code (worth - l) x need} over the items.
 *
 * <p>The search lowers the prices of what is in surplus and raises those of what is short by subgradient steps, halved
 * when the bound does not fall; it keeps every cut that a price brought forth, and exchanges cuts one log and two logs at
 * a time until nothing improves. What it finds is shown beside the least bound; it is not proven best unless the two meet.
 *
 * <p>A choice that was found before, among fewer cuts, can be given: what is found then is worth no less.
 */
final class Allocation {

    /** One way to saw one log. */
    record Cut<T>(T pattern, List<Double> amounts, double passCost, double bound) {
        Cut {
            amounts = List.copyOf(amounts);
        }
    }

    /** Gives the best cut of each log at given prices, with a bound on the worth of any cut at those prices. */
    interface Sawyer<T> {
        List<Cut<T>> saw(double[] prices);
    }

    /** The chosen cut of each log, what they are worth together, and what no plan exceeds. */
    record Result<T>(List<Cut<T>> cuts, double worth, double bound, int rounds) {
        Result {
            cuts = List.copyOf(cuts);
        }
    }

    /** With more logs only one is exchanged at a time: pairs grow with the square of their count. */
    private static final int MOST_IN_PAIRS = 60;

    private Allocation() {}

    static <T> Result<T> share(
            int logs, double[] need, double[] worth, double surplusShare, int rounds, Sawyer<T> sawyer) {
        return share(logs, need, worth, surplusShare, rounds, sawyer, List.of());
    }

    /**
     * The same with choices that were found before.
     *
     * @param before each with one cut a log, which the sawyer could have made; their prices and bounds are not used
     */
    static <T> Result<T> share(
            int logs,
            double[] need,
            double[] worth,
            double surplusShare,
            int rounds,
            Sawyer<T> sawyer,
            List<Result<T>> before) {
        int items = need.length;
        double[] prices = worth.clone();
        List<List<Cut<T>>> pool = new ArrayList<>();
        for (int log = 0; log < logs; log++) {
            pool.add(new ArrayList<>());
        }
        double bound = Double.POSITIVE_INFINITY;
        int[] best = new int[logs];
        double bestWorth = Double.NEGATIVE_INFINITY;
        int done = 0;
        double stride = 1;
        while (done < rounds && !(bestWorth >= bound)) {
            double[] made = new double[items];
            double sum = 0;
            int[] choice = new int[logs];
            List<Cut<T>> cuts = sawyer.saw(prices.clone());
            for (int log = 0; log < logs; log++) {
                Cut<T> cut = cuts.get(log);
                sum += cut.bound();
                choice[log] = indexOf(pool.get(log), cut);
                for (int i = 0; i < items; i++) {
                    made[i] += cut.amounts().get(i);
                }
            }
            for (int i = 0; i < items; i++) {
                sum += (worth[i] - prices[i]) * need[i];
            }
            stride = sum < bound ? stride : stride / 2;
            bound = Math.min(bound, sum);
            double now = exchange(pool, choice, need, worth, surplusShare);
            if (now > bestWorth) {
                bestWorth = now;
                best = choice;
            }
            done++;
            move(prices, worth, surplusShare, need, made, stride * (sum - bestWorth));
        }
        List<int[]> starts = new ArrayList<>();
        for (Result<T> known : before) {
            int[] choice = new int[logs];
            for (int log = 0; log < logs; log++) {
                choice[log] = indexOf(pool.get(log), known.cuts().get(log));
            }
            starts.add(choice);
        }
        // Cuts of later rounds, and of what was known, may serve the best choice so far.
        bestWorth = exchange(pool, best, need, worth, surplusShare);
        for (int[] choice : starts) {
            double now = exchange(pool, choice, need, worth, surplusShare);
            if (improves(now, bestWorth)) {
                bestWorth = now;
                best = choice;
            }
        }
        List<Cut<T>> chosen = new ArrayList<>();
        for (int log = 0; log < logs; log++) {
            chosen.add(pool.get(log).get(best[log]));
        }
        return new Result<>(chosen, bestWorth, bound, done);
    }

    /**
     * Moves the prices against surplus and shortage, as far as would close the gap to the best choice if the worth of all
     * cuts were linear in them (a subgradient step); a price at an end of its range that would leave it stays.
     */
    private static void move(
            double[] prices, double[] worth, double surplusShare, double[] need, double[] made, double gap) {
        double[] slope = new double[prices.length];
        double norm = 0;
        for (int i = 0; i < prices.length; i++) {
            double lack = need[i] - made[i];
            boolean stays = lack > 0 ? prices[i] >= worth[i] : prices[i] <= worth[i] * surplusShare;
            slope[i] = stays ? 0 : lack * worth[i];
            norm += slope[i] * slope[i];
        }
        if (!(norm > 0)) {
            return;
        }
        for (int i = 0; i < prices.length; i++) {
            double moved = prices[i] + gap * slope[i] * worth[i] / norm;
            prices[i] = Math.max(worth[i] * surplusShare, Math.min(worth[i], moved));
        }
    }

    private static <T> int indexOf(List<Cut<T>> cuts, Cut<T> cut) {
        for (int i = 0; i < cuts.size(); i++) {
            Cut<T> known = cuts.get(i);
            if (known.amounts().equals(cut.amounts()) && known.passCost() <= cut.passCost()) {
                return i;
            }
        }
        cuts.add(cut);
        return cuts.size() - 1;
    }

    /** Improves a choice in place, one log at a time and then two, first the best exchange, until none is left. */
    private static <T> double exchange(
            List<List<Cut<T>>> pool, int[] choice, double[] need, double[] worth, double surplusShare) {
        int logs = choice.length;
        double[] made = new double[need.length];
        double cost = 0;
        for (int log = 0; log < logs; log++) {
            cost += add(made, pool.get(log).get(choice[log]), 1);
        }
        double now = value(made, need, worth, surplusShare) - cost;
        while (true) {
            double best = now;
            int[] move = new int[0];
            for (int a = 0; a < logs; a++) {
                Cut<T> oldA = pool.get(a).get(choice[a]);
                double costA = cost + add(made, oldA, -1);
                for (int i = 0; i < pool.get(a).size(); i++) {
                    Cut<T> newA = pool.get(a).get(i);
                    double withA = costA + add(made, newA, 1);
                    double single = value(made, need, worth, surplusShare) - withA;
                    if (improves(single, best)) {
                        best = single;
                        move = new int[] {a, i};
                    }
                    for (int b = a + 1; b < logs && logs <= MOST_IN_PAIRS; b++) {
                        double costB = withA + add(made, pool.get(b).get(choice[b]), -1);
                        for (int j = 0; j < pool.get(b).size(); j++) {
                            double both = costB + add(made, pool.get(b).get(j), 1);
                            double pair = value(made, need, worth, surplusShare) - both;
                            if (improves(pair, best)) {
                                best = pair;
                                move = new int[] {a, i, b, j};
                            }
                            add(made, pool.get(b).get(j), -1);
                        }
                        add(made, pool.get(b).get(choice[b]), 1);
                    }
                    add(made, newA, -1);
                }
                add(made, oldA, 1);
            }
            if (move.length == 0) {
                return now;
            }
            for (int k = 0; k < move.length; k += 2) {
                cost += add(made, pool.get(move[k]).get(choice[move[k]]), -1);
                choice[move[k]] = move[k + 1];
                cost += add(made, pool.get(move[k]).get(choice[move[k]]), 1);
            }
            now = best;
        }
    }

    /** Sums differ in their last bits with the order of exchanges; less than this is no improvement. */
    private static boolean improves(double candidate, double best) {
        return candidate > best + 1e-9 * Math.max(1, Math.abs(best));
    }

    private static <T> double add(double[] made, Cut<T> cut, int sign) {
        for (int i = 0; i < made.length; i++) {
            made[i] += sign * cut.amounts().get(i);
        }
        return sign * cut.passCost();
    }

    private static double value(double[] made, double[] need, double[] worth, double surplusShare) {
        double sum = 0;
        for (int i = 0; i < made.length; i++) {
            double used = Math.min(made[i], need[i]);
            sum += worth[i] * (used + surplusShare * Math.max(0, made[i] - need[i]));
        }
        return sum;
    }
}
