package org.woodyield.job;

import java.util.List;
import java.util.stream.Collectors;

/** The input cannot be used; carries all that is wrong with it. */
final class BadInputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Lines of text, one for each problem; exceptions are serialisable, and lists of records need not be. */
    private final String[] lines;

    BadInputException(List<Problem> problems) {
        this(problems.stream().map(Problem::toString).toArray(String[]::new));
    }

    BadInputException(String... lines) {
        super(List.of(lines).stream().collect(Collectors.joining("\n")));
        this.lines = lines.clone();
    }

    List<String> lines() {
        return List.of(lines);
    }
}
