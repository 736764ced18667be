package org.woodyield.job;

import java.util.List;
import java.util.Optional;
import org.woodyield.measure.Length;
import picocli.CommandLine.ParseResult;

/** What stands behind a command, read as the job files are; what cannot be read is noted under the command and its place. */
record Arguments(String command, ParseResult given, Problems problems) {

    /** A value to go on with; the problem that is noted stops the command before it is used. */
    private static final Length SOME = Length.inches(12);

    /** What stands at a place, counted from 0; empty where nothing does. */
    Cell argument(int index, String label) {
        return new Cell(command, 0, label, given.matchedPositionalValue(index, ""), problems);
    }

    /** The value of an option, if it is given. */
    Optional<Cell> find(String option) {
        Optional<String> text = Optional.ofNullable(given.matchedOptionValue(option, null));
        return text.map(value -> new Cell(command, 0, option, value, problems));
    }

    /** The value of an option, or another where it is not given. */
    Cell cell(String option, String without) {
        return new Cell(command, 0, option, given.matchedOptionValue(option, without), problems);
    }

    /** A length above zero, required. */
    Length length(String option, Length greatest) {
        return length(option, "", greatest);
    }

    /** A length above zero. */
    Length length(String option, String without, Length greatest) {
        return cell(option, without).lengthUpTo(greatest, "check the unit").orElse(SOME);
    }

    /** A length, zero included. */
    Length lengthOrNone(String option, String without, Length greatest) {
        return cell(option, without)
                .lengthOrNoneUpTo(greatest, "check the unit")
                .orElse(SOME);
    }

    /** One or more lengths, required, with semicolons between. */
    List<Length> lengths(String option, Length greatest) {
        return cell(option, "")
                .lengthsUpTo(greatest, "write them as 8 ft; 12 ft; 16 ft")
                .orElse(List.of(SOME));
    }
}
