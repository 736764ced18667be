package org.woodyield.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Gathers what is wrong with the input, so that all of it can be told together. */
final class Problems {

    private final Set<Problem> found = new LinkedHashSet<>();

    void add(Problem problem) {
        found.add(problem);
    }

    void add(String file, int line, String column, String value, String allowed, String remedy) {
        add(new Problem(file, line, column, value, allowed, remedy));
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    /** As they were found. */
    List<Problem> inOrder() {
        return List.copyOf(found);
    }

    /** File by file in the order of reading, each from the top. */
    List<Problem> sorted() {
        List<Problem> sorted = new ArrayList<>(found);
        sorted.sort(Comparator.comparingInt((Problem problem) -> JobFile.order(problem.file()))
                .thenComparingInt(Problem::line));
        return List.copyOf(sorted);
    }

    void stopIfAny() {
        if (!isEmpty()) {
            throw new BadInputException(sorted());
        }
    }
}
