package org.woodyield.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.woodyield.measure.OutOfDomainException;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** The command line: which commands there are, and how each ends. */
final class Commands {

    static final String NAME = "woodyield";

    private static final Subcommand PLAN = new PlanCommand();

    /** In the order in which the help lists them. */
    private static final List<Subcommand> SUBCOMMANDS = List.of(
            new NewJobCommand(),
            new GreenSizeCommand(),
            new DryingCommand(),
            new ScaleCommand(),
            new RulesCommand(),
            new CompareRulesCommand(),
            new TreesCommand(),
            new BuckCommand(),
            new TimberCommand(),
            new SizesCommand(),
            new TallyCommand(),
            new CompareSawsCommand(),
            new SpeciesCommand());

    private final Terminal terminal;

    Commands(OutputStream results, PrintStream messages) {
        terminal = new Terminal(results, messages);
    }

    /** Runs one command and gives its exit code; what went wrong is told on the messages' stream. */
    int run(List<String> arguments) {
        try {
            return run(commandLine().parseArgs(arguments.toArray(String[]::new)));
        } catch (CommandLine.UnmatchedArgumentException e) {
            terminal.say(e.getUnmatched().stream()
                    .findFirst()
                    .flatMap(Commands::belowZero)
                    .orElse(e.getMessage() + "; see --help"));
            return Main.INPUT;
        } catch (CommandLine.MissingParameterException e) {
            terminal.say(missing(e, arguments));
            return Main.INPUT;
        } catch (CommandLine.ParameterException e) {
            terminal.say(e.getMessage() + "; see --help");
            return Main.INPUT;
        } catch (BadInputException e) {
            e.lines().forEach(terminal::say);
            if (e.lines().size() > 1) {
                terminal.say(e.lines().size() + " problems; nothing was planned or written");
            }
            return Main.INPUT;
        } catch (OutOfDomainException e) {
            terminal.say(e.getMessage());
            return Main.INPUT;
        } catch (IOException e) {
            terminal.say("cannot read " + e.getMessage());
            return Main.INPUT;
        } catch (RuntimeException | StackOverflowError e) {
            terminal.say("a fault of this program; please report it with the input and these lines");
            e.printStackTrace(terminal.messages());
            return Main.OUR_FAULT;
        }
    }

    /** A measure below zero looks like an option, and is not one that anybody meant. */
    private static Optional<String> belowZero(String argument) {
        return argument.matches("-\\s*[.\\d].*")
                ? Optional.of(
                        "'" + argument + "' is not accepted; allowed: measures above 0; write it without the minus")
                : Optional.empty();
    }

    /** What stands behind an option that takes a value is that value and stands in nobody's place. */
    private static List<String> withoutOptionValues(List<String> arguments, CommandSpec spec) {
        List<String> others = new ArrayList<>();
        boolean value = false;
        for (String argument : arguments) {
            if (!value) {
                others.add(argument);
            }
            value = !value
                    && Optional.ofNullable(spec.optionsMap().get(argument))
                            .filter(option -> option.arity().max() > 0)
                            .isPresent();
        }
        return others;
    }

    /** Names all that must stand behind the command and does not; an option without its value is told as it comes. */
    private static String missing(CommandLine.MissingParameterException e, List<String> arguments) {
        if (e.getMissing().isEmpty() || e.getMissing().stream().anyMatch(ArgSpec::isOption)) {
            return e.getMessage() + "; see --help";
        }
        CommandSpec spec = e.getCommandLine().getCommandSpec();
        List<String> all = spec.positionalParameters().stream()
                .filter(ArgSpec::required)
                .map(ArgSpec::paramLabel)
                .toList();
        // Only the first is told as missing, though all after it are.
        int first = Math.max(0, all.indexOf(e.getMissing().get(0).paramLabel()));
        String labels = String.join(" and ", all.subList(first, all.size()));
        String needs = spec.name() + " needs " + labels + "; write " + spec.name() + " " + String.join(" ", all)
                + "; see " + spec.name() + " --help";
        return withoutOptionValues(arguments, spec).stream()
                .flatMap(argument -> belowZero(argument).stream())
                .findFirst()
                .orElse(needs);
    }

    private static CommandLine commandLine() {
        String version = NAME + " " + version();
        CommandLine line = new CommandLine(spec(PLAN, version));
        SUBCOMMANDS.forEach(subcommand -> line.addSubcommand(subcommand.name(), spec(subcommand, version)));
        line.setExpandAtFiles(false);
        return line;
    }

    private static CommandSpec spec(Subcommand subcommand, String version) {
        CommandSpec spec = subcommand.spec().name(subcommand.name()).mixinStandardHelpOptions(true);
        spec.version(version);
        return spec;
    }

    private int run(ParseResult parsed) throws IOException {
        ParseResult last = parsed.hasSubcommand() ? parsed.subcommand() : parsed;
        if (last.isUsageHelpRequested()) {
            return terminal.print("help", new CommandLine(last.commandSpec()).getUsageMessage(Ansi.OFF));
        }
        if (last.isVersionHelpRequested()) {
            return terminal.print(
                    "version", String.join("\n", last.commandSpec().version()) + "\n");
        }
        String name = last.commandSpec().name();
        return SUBCOMMANDS.stream()
                .filter(subcommand -> subcommand.name().equals(name))
                .findFirst()
                .orElse(PLAN)
                .run(last, terminal);
    }

    private static String version() {
        try (InputStream in = Commands.class.getResourceAsStream("version.txt")) {
            if (in == null) {
                throw new IllegalStateException("no version.txt beside " + Commands.class.getName());
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
