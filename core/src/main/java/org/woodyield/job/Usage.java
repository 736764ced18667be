package org.woodyield.job;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** What may be written behind a command, put together piece by piece; a folder for results is asked for alike in all. */
final class Usage {

    private static final String OUT = "--out";
    private static final String REPLACE = "--replace";

    private final CommandSpec spec = CommandSpec.create();
    private int arguments;

    Usage(String description) {
        spec.usageMessage().description(description);
    }

    /** What must stand behind the command's word, in the order of the calls. */
    Usage argument(String label, String description) {
        return argument(label, "1", description);
    }

    /** What may stand there or not. */
    Usage argumentIfAny(String label, String description) {
        return argument(label, "0..1", description);
    }

    private Usage argument(String label, String arity, String description) {
        spec.addPositional(PositionalParamSpec.builder()
                .index(Integer.toString(arguments++))
                .paramLabel(label)
                .arity(arity)
                .required(arity.equals("1"))
                .type(String.class)
                .description(description)
                .build());
        return this;
    }

    Usage option(String name, String label, String description) {
        spec.addOption(OptionSpec.builder(name)
                .paramLabel(label)
                .type(String.class)
                .description(description)
                .build());
        return this;
    }

    /** An option that may be given several times. */
    Usage optionOften(String name, String label, String description) {
        spec.addOption(OptionSpec.builder(name)
                .paramLabel(label)
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description(description)
                .build());
        return this;
    }

    Usage flag(String name, String description) {
        spec.addOption(OptionSpec.builder(name)
                .type(boolean.class)
                .description(description)
                .build());
        return this;
    }

    /**
     * A folder for results, and leave to replace what stands there.
     *
     * @param description what is written to it
     * @param earlier what may be replaced, in a word
     */
    Usage out(String description, String earlier) {
        return option(OUT, "FOLDER", description)
                .flag(
                        REPLACE,
                        "Replace an earlier " + earlier
                                + " in that folder. A folder that holds anything else is left alone.");
    }

    Usage footer(String... lines) {
        spec.usageMessage().footer(lines);
        return this;
    }

    CommandSpec spec() {
        return spec;
    }

    /**
     * The folder for results, if one is asked for, checked before any work is done.
     *
     * @param files names of the files that would be written
     */
    static Optional<PlanFolder> folder(ParseResult given, Set<String> files) {
        Optional<String> out = Optional.ofNullable(given.matchedOptionValue(OUT, null));
        boolean replace = given.matchedOptionValue(REPLACE, false);
        if (replace && out.isEmpty()) {
            throw new BadInputException(REPLACE + " needs " + OUT + " FOLDER; nothing is written without it");
        }
        return out.map(name -> PlanFolder.of(name, files, replace));
    }
}
