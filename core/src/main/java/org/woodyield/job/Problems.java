package org.woodyield.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Gathers what is wrong with the input, so that all of it can be told together. */
final class Problems {

    private final Set<Problem> found = new LinkedHashSet<>();

    /** Columns that a table lacks, each told once. */
    private final Map<Column, Lack> lacking = new LinkedHashMap<>();

    private record Column(String file, String name) {}

    /** A column that is not there, and the lines of the rows that want it. */
    private record Lack(Problem problem, Set<Integer> rows) {
        private Problem counted() {
            String wanted =
                    rows.isEmpty() ? "" : rows.size() == 1 ? "; 1 row wants it" : "; " + rows.size() + " rows want it";
            return new Problem(
                    problem.file(),
                    problem.line(),
                    problem.column(),
                    problem.value(),
                    problem.allowed(),
                    problem.remedy() + wanted);
        }
    }

    void add(Problem problem) {
        found.add(problem);
    }

    void add(String file, int line, String column, String value, String allowed, String remedy) {
        add(new Problem(file, line, column, value, allowed, remedy));
    }

    /**
     * Notes that a table lacks a column; told once, however many rows want it.
     *
     * @param line where the names of the columns stand
     */
    void addLackingColumn(String file, int line, String column, String allowed, String remedy) {
        lacking.computeIfAbsent(new Column(file, column), key -> {
            Problem problem = new Problem(
                    file,
                    line,
                    column,
                    "",
                    allowed,
                    "the column is missing; add it" + (remedy.isEmpty() ? "" : "; " + remedy));
            add(problem);
            return new Lack(problem, new TreeSet<>());
        });
    }

    /** Counts a row that wants a column of which {@link #addLackingColumn} told. */
    void addRowInWant(String file, String column, int line) {
        Lack lack = lacking.get(new Column(file, column));
        if (lack != null) {
            lack.rows().add(line);
        }
    }

    /** Takes over what was noted elsewhere; the rows that want a column that a table lacks are counted together. */
    void addAll(Problems others) {
        others.found.stream()
                .filter(problem -> others.lacking.values().stream()
                        .noneMatch(lack -> lack.problem().equals(problem)))
                .forEach(this::add);
        others.lacking.forEach((column, lack) -> {
            Lack here = lacking.computeIfAbsent(column, key -> {
                add(lack.problem());
                return new Lack(lack.problem(), new TreeSet<>());
            });
            here.rows().addAll(lack.rows());
        });
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    /** As they were found. */
    List<Problem> inOrder() {
        return found.stream()
                .map(problem -> lacking.values().stream()
                        .filter(lack -> lack.problem().equals(problem))
                        .findFirst()
                        .map(Lack::counted)
                        .orElse(problem))
                .toList();
    }

    /** File by file in the order of reading, each from the top. */
    List<Problem> sorted() {
        List<Problem> sorted = new ArrayList<>(inOrder());
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
