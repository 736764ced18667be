package org.woodyield.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.woodyield.measure.OutOfDomainException;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** The command line: what may be written on it, and what is done then. */
final class Commands {

    private static final String NAME = "woodyield";

    private final PrintStream results;
    private final PrintStream messages;

    Commands(PrintStream results, PrintStream messages) {
        this.results = results;
        this.messages = messages;
    }

    /** Runs one command and gives its exit code; what went wrong is told on the messages' stream. */
    int run(List<String> arguments) {
        CommandLine line = new CommandLine(plan().addSubcommand("new-job", newJob()));
        line.setExpandAtFiles(false);
        try {
            return run(line.parseArgs(arguments.toArray(String[]::new)));
        } catch (CommandLine.ParameterException e) {
            messages.println(NAME + ": " + e.getMessage() + "; see --help");
            return Main.INPUT;
        } catch (BadInputException e) {
            e.lines().forEach(problem -> messages.println(NAME + ": " + problem));
            if (e.lines().size() > 1) {
                messages.println(NAME + ": " + e.lines().size() + " problems; nothing was planned or written");
            }
            return Main.INPUT;
        } catch (OutOfDomainException e) {
            messages.println(NAME + ": " + e.getMessage());
            return Main.INPUT;
        } catch (IOException e) {
            messages.println(NAME + ": cannot read " + e.getMessage());
            return Main.INPUT;
        } catch (RuntimeException | StackOverflowError e) {
            messages.println(NAME + ": a fault of this program; please report it with the job folder and these lines");
            e.printStackTrace(messages);
            return Main.OUR_FAULT;
        }
    }

    private static CommandSpec plan() {
        CommandSpec spec = CommandSpec.create().name(NAME).mixinStandardHelpOptions(true);
        spec.version(NAME + " " + version());
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("JOB")
                .arity("0..1")
                .type(String.class)
                .description("Folder of the job; without it the invented demonstration job is planned.")
                .build());
        spec.addOption(OptionSpec.builder("--out")
                .paramLabel("FOLDER")
                .type(String.class)
                .description("Write the plan as a page and tables to this folder, which must be new or empty.")
                .build());
        spec.addOption(OptionSpec.builder("--replace")
                .type(boolean.class)
                .description("Replace an earlier plan in that folder. A folder that holds anything else is left alone.")
                .build());
        spec.addOption(OptionSpec.builder("--check")
                .type(boolean.class)
                .description("Only read the job and tell what is wrong with it.")
                .build());
        spec.usageMessage()
                .description("Plans how to saw your logs into the lumber you want, and prints the plan.")
                .footer(
                        "",
                        "Exit codes: 0 done, a shortage of wood included; 1 a fault of this program;",
                        "2 the input or the command cannot be used; 130 interrupted.");
        return spec;
    }

    private static CommandSpec newJob() {
        CommandSpec spec = CommandSpec.create().mixinStandardHelpOptions(true);
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("FOLDER")
                .arity("1")
                .type(String.class)
                .description("Folder to write to; must be new or empty.")
                .build());
        spec.usageMessage()
                .description("Writes the files of the invented demonstration job, to be edited into your own.");
        return spec;
    }

    private int run(ParseResult parsed) throws IOException {
        ParseResult last = parsed.hasSubcommand() ? parsed.subcommand() : parsed;
        if (last.isUsageHelpRequested()) {
            results.print(new CommandLine(last.commandSpec()).getUsageMessage(Ansi.OFF));
            return Main.DONE;
        }
        if (last.isVersionHelpRequested()) {
            results.println(NAME + " " + version());
            return Main.DONE;
        }
        if (parsed.hasSubcommand()) {
            return writeDemo(last.matchedPositionalValue(0, ""));
        }
        Optional<String> out = Optional.ofNullable(parsed.matchedOptionValue("--out", null));
        boolean replace = parsed.matchedOptionValue("--replace", false);
        if (replace && out.isEmpty()) {
            throw new BadInputException("--replace needs --out FOLDER; nothing is written without it");
        }
        JobFiles files = files(Optional.ofNullable(parsed.matchedPositionalValue(0, null)));
        if (parsed.matchedOptionValue("--check", false)) {
            results.print(Outputs.summary(JobReader.read(files)));
            return Main.DONE;
        }
        return planJob(files, out, replace);
    }

    private int writeDemo(String folder) throws IOException {
        Path written = PlanFolder.of(folder, Set.of(), false).write(new JobFiles.Demo().all());
        results.println("The invented demonstration job stands in " + written + "; edit it, then give that folder.");
        return Main.DONE;
    }

    private static JobFiles files(Optional<String> job) {
        if (job.isEmpty()) {
            return new JobFiles.Demo();
        }
        Path folder;
        try {
            folder = Path.of(job.get());
        } catch (InvalidPathException e) {
            throw new BadInputException("job folder '" + job.get() + "' is not a path; choose another name");
        }
        if (!Files.isDirectory(folder)) {
            throw new BadInputException(
                    "job folder '" + job.get() + "' is " + (Files.exists(folder) ? "not a folder" : "not there") + "; "
                            + NAME + " new-job FOLDER makes one");
        }
        return new JobFiles.Folder(folder);
    }

    private int planJob(JobFiles files, Optional<String> out, boolean replace) throws IOException {
        // The folder is checked first, so that nobody waits for a plan that cannot be written.
        Optional<PlanFolder> folder = out.map(name -> PlanFolder.of(name, Outputs.FILES, replace));
        Outputs outputs;
        Progress progress = Progress.of("planning", messages, Progress.isWatched());
        try {
            outputs = Outputs.of(JobReader.read(files), files.origin(), progress::reached);
        } finally {
            progress.end();
        }
        results.print(outputs.text());
        if (results.checkError()) {
            messages.println(NAME + ": the plan could not be printed; is the disk full, or the other end closed?");
            return Main.OUR_FAULT;
        }
        folder.ifPresent(target -> messages.println(NAME + ": the plan stands in " + target.write(outputs.files())));
        return Main.DONE;
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
