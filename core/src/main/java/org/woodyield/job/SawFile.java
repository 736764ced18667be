package org.woodyield.job;

import java.util.Optional;
import java.util.function.Consumer;
import org.woodyield.plan.JobInput;
import org.woodyield.sawing.Saw;
import org.woodyield.work.WorkInputs;

/**
 * A file that describes a saw: the keys of the properties file that belong to a saw. What it leaves out of the saw itself is the
 * default of its kind or is missing; what belongs to the job comes from the job.
 */
final class SawFile {

    private SawFile() {}

    /** Notes what is wrong with such a file by itself. */
    static void check(String file, Optional<String> text, Problems problems) {
        text.ifPresent(present -> {
            SettingsReader reader = reader(file, present, problems);
            if (reader.formatIsKnown()) {
                reader.saw();
                reader.work();
            }
        });
    }

    /**
     * The job with the saw of a file; empty, and noted, where the file cannot be used. Whether the saw suits the logs is left to the
     * plan, which goes on without it.
     */
    static Optional<JobInput> read(String file, String text, JobInput job, Problems problems) {
        return read(reader(file, text, problems), job, with -> {});
    }

    /** The job with the saw of a file; empty, and noted, where it cannot be used; noted also where the kerf does not suit the job. */
    static Optional<JobInput> readFitting(String file, String text, JobInput job, Problems problems) {
        SettingsReader reader = reader(file, text, problems);
        return read(
                reader,
                job,
                saw -> JobReader.refuseWideKerf(
                        reader, saw.kerf(), job.logs(), job.pieces(), job.areas(), job.naturalEdges()));
    }

    private static Optional<JobInput> read(SettingsReader reader, JobInput job, Consumer<Saw> fits) {
        if (!reader.formatIsKnown()) {
            return Optional.empty();
        }
        Optional<Saw> saw = reader.saw();
        Optional<WorkInputs> work = reader.work(job.work().values());
        saw.ifPresent(fits);
        return saw.isPresent() && work.isPresent() ? Optional.of(job.withSaw(saw.get(), work.get())) : Optional.empty();
    }

    /** Notes that another saw is called so. */
    static void refuseName(String file, String name, String earlierFile, Problems problems) {
        problems.add(
                file,
                0,
                Keys.SAW_NAME.text(),
                name,
                "a name that no other saw has",
                "the saw of " + earlierFile + " is called so; give another saw.name");
    }

    private static SettingsReader reader(String file, String text, Problems problems) {
        return new SettingsReader(Settings.read(file, text, Keys.ofSaw(), problems));
    }
}
