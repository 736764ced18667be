package org.woodyield.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.woodyield.measure.Length;
import picocli.CommandLine.ParseResult;

/** Measures behind the options of a command; what cannot be read is noted under the option's name. */
record Arguments(ParseResult given, Problems problems) {

    /** A value to go on with; the problem that is noted stops the command before it is used. */
    private static final Length SOME = Length.inches(12);

    Cell cell(String option, String without) {
        return new Cell(option, 0, "", given.matchedOptionValue(option, without), problems);
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
        List<Length> lengths = new ArrayList<>();
        for (Cell part : cell(option, "").split(';')) {
            Optional<Length> length = part.lengthUpTo(greatest, "write them as 8 ft; 12 ft; 16 ft");
            length.ifPresent(lengths::add);
        }
        return lengths.isEmpty() ? List.of(SOME) : lengths;
    }
}
