package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import org.woodyield.plan.JobInput;
import org.woodyield.work.WorkInputs;

/** Compares two jobs; the figures of work are compared by their values, the rest as it is. */
final class SameJob {

    private SameJob() {}

    static void assertSame(JobInput actual, JobInput expected) {
        assertThat(actual.work().values()).isEqualTo(expected.work().values());
        assertThat(actual.otherSaw().map(other -> other.work().values()))
                .isEqualTo(expected.otherSaw().map(other -> other.work().values()));
        assertThat(withoutWork(actual)).isEqualTo(withoutWork(expected));
    }

    private static JobInput withoutWork(JobInput job) {
        return new JobInput(
                job.title(),
                job.currency(),
                job.logs(),
                job.pieces(),
                job.areas(),
                job.naturalEdges(),
                job.saw(),
                job.guide(),
                job.space(),
                WorkInputs.chainDefaults(),
                job.planing(),
                job.undersizePercent(),
                job.yard(),
                job.prices(),
                job.otherSaw().map(other -> new JobInput.OtherSaw(other.saw(), WorkInputs.chainDefaults())),
                job.assumptions());
    }
}
