package org.woodyield.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import org.woodyield.plan.JobInput;
import org.woodyield.plan.Planner;
import org.woodyield.source.Source;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Plans a job; what is done where no other word is written. */
final class PlanCommand implements Subcommand {

    @Override
    public String name() {
        return Commands.NAME;
    }

    @Override
    public CommandSpec spec() {
        return new Usage("Plans how to saw your logs into the lumber you want, and prints the plan.")
                .argumentIfAny("JOB", "Folder of the job; without it the invented demonstration job is planned.")
                .out("Write the plan as a page and tables to this folder, which must be new or empty.", "plan")
                .option(
                        "--what-if",
                        "LOG",
                        "Also tell what this log would give with another kerf, first face or diameter.")
                .option(
                        Question.OPTION,
                        "SIZE",
                        "With --what-if: also if this size were wanted too, such as"
                                + " '1x6, 8 ft, dressed dry, 15 %%' (size, length, surface, moisture).")
                .flag(
                        "--check",
                        "Only read the job, and what is written beside it, and tell what is wrong; plan and"
                                + " write nothing. Whether the saw can cut each log is not looked at: only planning sees that.")
                .footer(
                        "",
                        "Exit codes: 0 done, a shortage of wood included; 1 a fault of this program;",
                        "2 the input or the command cannot be used; 130 interrupted.")
                .spec();
    }

    @Override
    public int run(ParseResult given, Terminal terminal) throws IOException {
        Optional<String> log = Optional.ofNullable(given.matchedOptionValue("--what-if", null));
        Optional<String> size = Optional.ofNullable(given.matchedOptionValue(Question.OPTION, null));
        if (size.isPresent() && log.isEmpty()) {
            throw new BadInputException(Question.OPTION + " needs --what-if LOG; name the log that would give it");
        }
        Optional<Question> whatIf = log.map(id -> Question.read(id, size));
        JobFiles files = files(Optional.ofNullable(given.matchedPositionalValue(0, null)));
        // The folder and the question are checked first, so that nobody waits for a plan that is of no use.
        Optional<PlanFolder> folder = Usage.folder(given, Outputs.FILES);
        JobInput job = JobReader.read(files);
        Optional<Question> asked = whatIf.map(question -> question.of(job));
        if (given.matchedOptionValue("--check", false)) {
            return terminal.print("summary", Outputs.summary(job));
        }
        return plan(job, files.origin(), folder, asked, terminal);
    }

    /** The job that is named, or the demonstration. */
    static JobFiles files(Optional<String> job) {
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
                            + Commands.NAME + " new-job FOLDER makes one");
        }
        return new JobFiles.Folder(folder);
    }

    private static int plan(
            JobInput job, Source origin, Optional<PlanFolder> folder, Optional<Question> whatIf, Terminal terminal) {
        Outputs outputs;
        int searches = Planner.searches(job);
        String planning = searches == 1 ? "planning" : "planning by " + searches + " searches";
        Progress progress = Progress.of(planning, terminal.messages(), Progress.isWatched());
        try {
            outputs = Outputs.of(job, origin, whatIf, progress::reached);
        } finally {
            progress.end();
        }
        int code = terminal.print("plan", outputs.text());
        if (code == Main.DONE) {
            folder.ifPresent(target -> terminal.say("the plan stands in " + target.write(outputs.files())));
        }
        return code;
    }
}
