package org.woodyield.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.plan.JobInput;
import org.woodyield.plan.JobPlan;
import org.woodyield.plan.Planner;
import org.woodyield.plan.SawsOnJob;
import org.woodyield.show.PlanTable;
import org.woodyield.show.SawSheet;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Plans one job with two saws or more and sets what comes of it side by side. */
final class CompareSawsCommand implements Subcommand {

    private static final String PAGE = "saws.html";

    private static final Set<String> FILES = Stream.concat(
                    Stream.of(PAGE), SawSheet.TABLE_NAMES.stream().map(CompareSawsCommand::tableFile))
            .collect(Collectors.toUnmodifiableSet());

    @Override
    public String name() {
        return "compare-saws";
    }

    @Override
    public CommandSpec spec() {
        return new Usage("Plans the job with its own saw and with others: lumber, kerf, days, fuel, money, and from"
                        + " which volume on one saw is cheaper than the other.")
                .argumentIfAny("JOB", "Folder of the job; without it the invented demonstration job.")
                .optionOften(
                        "--saw",
                        "FILE",
                        "File that describes another saw by the keys saw..., work... and money... of job.properties"
                                + " that belong to a saw; may be given several times. Without it "
                                + JobFile.OTHER_SAW.fileName() + " of the job.")
                .out(
                        "Write " + PAGE + " with a drawing, and tables, to this folder, which must be new or empty.",
                        "result")
                .spec();
    }

    @Override
    public int run(ParseResult given, Terminal terminal) throws IOException {
        JobFiles files = PlanCommand.files(Optional.ofNullable(given.matchedPositionalValue(0, null)));
        Optional<PlanFolder> folder = Usage.folder(given, FILES);
        // The other saw is set beside it here, not chosen in its plan.
        JobInput own = JobReader.read(files).withOtherSaw(Optional.empty());
        List<WithSaw> jobs = new ArrayList<>(List.of(new WithSaw(JobFile.JOB.fileName(), own)));
        jobs.addAll(others(own, texts(files, given.matchedOptionValue("--saw", List.of()))));
        List<String> leftOut = new ArrayList<>();
        List<JobPlan> plans = planned(jobs, terminal, leftOut);
        SawSheet sheet = SawSheet.of(new SawsOnJob(plans), files.origin(), leftOut);
        int code = terminal.print("comparison", sheet.text());
        if (code == Main.DONE) {
            folder.ifPresent(target -> terminal.say("the comparison stands in " + target.write(contents(sheet))));
        }
        return code;
    }

    /** File name to text, of each file that was named or of the one that the job holds. */
    private static Map<String, byte[]> texts(JobFiles files, List<String> named) throws IOException {
        Map<String, byte[]> texts = new LinkedHashMap<>();
        for (String name : named) {
            byte[] text = Sheets.bytes(
                    "saw file",
                    name,
                    Commands.NAME + " new-job FOLDER writes an example, " + JobFile.OTHER_SAW.fileName());
            if (texts.put(name, text) != null) {
                throw new BadInputException("saw file '" + name + "' is named twice; name each saw once");
            }
        }
        if (named.isEmpty()) {
            String file = JobFile.OTHER_SAW.fileName();
            texts.put(
                    file,
                    files.bytes(file)
                            .orElseThrow(() -> new BadInputException("the job holds no " + file
                                    + "; name the other saw with --saw FILE, or put such a file into the job")));
        }
        return texts;
    }

    /** The job with a saw, and the file that describes the saw. */
    private record WithSaw(String file, JobInput job) {}

    private static List<WithSaw> others(JobInput own, Map<String, byte[]> texts) {
        Problems problems = new Problems();
        Map<String, String> fileOfSaw = new LinkedHashMap<>();
        fileOfSaw.put(own.saw().name(), JobFile.JOB.fileName());
        List<WithSaw> others = new ArrayList<>();
        texts.forEach((file, bytes) -> FileText.decode(file, bytes, problems)
                .flatMap(text -> SawFile.readFitting(file, text, own, problems))
                .ifPresent(job -> {
                    String name = job.saw().name();
                    String earlier = fileOfSaw.putIfAbsent(name, file);
                    if (earlier != null) {
                        SawFile.refuseName(file, name, earlier, problems);
                    }
                    others.add(new WithSaw(file, job));
                }));
        problems.stopIfAny();
        return others;
    }

    /** Another saw of which there is no plan is left out with the reason, as long as two are left to compare. */
    private static List<JobPlan> planned(List<WithSaw> jobs, Terminal terminal, List<String> leftOut) {
        List<JobPlan> plans = new ArrayList<>();
        for (WithSaw one : jobs) {
            String name = one.job().saw().name();
            Progress progress = Progress.of("planning with " + name, terminal.messages(), Progress.isWatched());
            try {
                plans.add(Outputs.planned(one.job(), " in " + one.file() + ", of " + name, progress::reached));
            } catch (OutOfDomainException e) {
                int othersLeft = jobs.size() - 1 - leftOut.size() - 1;
                // A width that does not do names the file of its saw; what the first saw fails at may be the job's own
                // fault.
                boolean width = e.parameter().equals(Planner.WIDTH);
                String why = width
                        ? name + ": it can saw none of the logs; " + e.getMessage()
                        : name + ", of " + one.file() + ": it cannot be planned; " + e.getMessage();
                if (plans.isEmpty() || othersLeft < 1) {
                    leftOut.forEach(reason -> terminal.say("left out, " + reason));
                    throw plans.isEmpty() || width ? e : new BadInputException(why);
                }
                leftOut.add(why);
            } finally {
                progress.end();
            }
        }
        leftOut.forEach(reason -> terminal.say("left out, " + reason));
        return plans;
    }

    private static Map<String, byte[]> contents(SawSheet sheet) {
        Map<String, byte[]> contents = new LinkedHashMap<>();
        contents.put(PAGE, sheet.page().getBytes(StandardCharsets.UTF_8));
        for (PlanTable table : sheet.tables()) {
            contents.put(tableFile(table.name()), Outputs.csv(table));
        }
        return contents;
    }

    private static String tableFile(String name) {
        return "saws-" + name + ".csv";
    }
}
