package org.woodyield.job;

import java.io.IOException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** One thing that the command line can do; {@link Commands} lists them all. */
interface Subcommand {

    /** The word that calls it. */
    String name();

    /** What may be written behind that word; help and version are added to it. */
    CommandSpec spec();

    /**
     * Does it.
     *
     * @return the exit code
     * @throws BadInputException if the input cannot be used
     * @throws IOException if the input cannot be read
     */
    int run(ParseResult given, Terminal terminal) throws IOException;
}
